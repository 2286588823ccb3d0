import { CHECK_RULES } from "../../data/check-rules.js";
import { RULES } from "../../data/rules.js";
import type { RowFacts } from "./facts.js";
import { gradeBy, isTwoHot } from "./graded.js";
import { above, below, when } from "./hit.js";
import type { Hit } from "./hit.js";
import type { Rule } from "./rule.js";
import { isInOtherUnit } from "./stops.js";

const caution = (id: string, find: Rule["find"]): Rule => ({ id, kind: "caution", find });

/** From `from` on and below `to`. */
const between = (value: number | undefined, from: number, to: number): boolean =>
  value !== undefined && !below(value, from) && below(value, to);
/** Above `from`, up to `to`. */
const beyond = (value: number | undefined, from: number, to: number): boolean =>
  above(value, from) && !above(value, to);

/** What calls for care. */
export const CAUTIONS: readonly Rule[] = [
  caution("load-light", ({ loadShare, minimumLoad }) =>
    when(between(loadShare?.ratio, minimumLoad, CHECK_RULES.load_light.value), loadShare?.column ?? "", () => ({
      ratio: loadShare?.ratio ?? NaN,
    })),
  ),
  caution("imbalance", ({ imbalance, isDirect, currents }) =>
    when(
      isDirect && imbalance !== Infinity && above(imbalance, CHECK_RULES.imbalance_most.value),
      currents[0]?.column ?? "",
      () => ({ imbalance: imbalance ?? NaN }),
    ),
  ),
  caution("phase-without-current", ({ imbalance, isDirect, currents }) => {
    const without = currents.find(({ value }) => value === 0)?.column ?? "";
    return when(isDirect && imbalance === Infinity, without, () => ({ column: without }));
  }),
  caution("emissivity-wide", ({ emissivity, isMeasured }) =>
    when(
      isMeasured && between(emissivity, CHECK_RULES.emissivity_qualitative.value, CHECK_RULES.emissivity_wide.value),
      "emissivity",
      () => ({ emissivity: emissivity ?? NaN }),
    ),
  ),
  caution("emissivity-qualitative", ({ emissivity, isMeasured }) =>
    when(isMeasured && below(emissivity, CHECK_RULES.emissivity_qualitative.value), "emissivity", () => ({
      emissivity: emissivity ?? NaN,
    })),
  ),
  caution("metal-without-source", ({ isBareMetal, emissivity, row }) => {
    const isKnown = ["measured", "handbook"].includes(row.text("known_from") ?? "");
    const isHigh = above(emissivity, CHECK_RULES.metal_emissivity_unsourced.value);
    return when(isBareMetal && isHigh && !isKnown, "known_from", () => ({
      emissivity: emissivity ?? NaN,
      surface: row.text("surface") ?? row.text("material") ?? "",
    }));
  }),
  caution("spot-close", ({ spotMargin, isMeasured }) =>
    when(
      isMeasured && between(spotMargin, CHECK_RULES.spot_margin_least.value, CHECK_RULES.spot_margin_close.value),
      "target_size",
      () => ({ margin: spotMargin ?? NaN }),
    ),
  ),
  caution("reflected-assumed", ({ isReflectedAssumed, emissivity, isMeasured }) => {
    const effect = emissivity && ((1 - emissivity) * CHECK_RULES.assumed_reflected_error.value) / emissivity;
    const isMuch = above(effect, CHECK_RULES.assumed_reflected_effect.value);
    return when(isMeasured && isReflectedAssumed && isMuch, "reflected_method", () => ({
      effect: effect ?? NaN,
      error: CHECK_RULES.assumed_reflected_error.value,
    }));
  }),
  caution("reflected-near-air", ({ isOutdoors, emissivity, reflected, row, isMeasured }) => {
    const apart = Math.abs((reflected ?? NaN) - (row.number("surrounding_air") ?? NaN));
    const isNear = below(apart, CHECK_RULES.reflected_near_air.value);
    const counts = below(emissivity, CHECK_RULES.outdoors_emissivity.value);
    return when(isMeasured && isOutdoors && counts && isNear, "reflected", () => ({ apart }));
  }),
  caution("wind-noted", ({ row }) => {
    const wind = row.number("wind");
    return when(beyond(wind, CHECK_RULES.wind_note.value, CHECK_RULES.wind_doubtful.value), "wind", () => ({
      wind: wind ?? NaN,
    }));
  }),
  caution("wind-doubtful", ({ row }) => {
    const wind = row.number("wind");
    return when(beyond(wind, CHECK_RULES.wind_doubtful.value, RULES.wind_most.value), "wind", () => ({
      wind: wind ?? NaN,
    }));
  }),
  caution("sun", ({ row }) =>
    when(below(row.number("hours_since_sun"), CHECK_RULES.sun.value), "hours_since_sun", () => ({
      hours: row.number("hours_since_sun") ?? NaN,
    })),
  ),
  caution("load-changed", ({ row }) => {
    const minutes = row.number("minutes_since_load_change");
    const settling = settlingOf(row.number("settling"), row.text("equipment"));
    return when(below(minutes, settling), "minutes_since_load_change", () => ({ minutes: minutes ?? NaN, settling }));
  }),
  caution("door-open", ({ row }) =>
    when(above(row.number("minutes_door_open"), CHECK_RULES.door_open.value), "minutes_door_open", () => ({
      minutes: row.number("minutes_door_open") ?? NaN,
    })),
  ),
  caution("camera-cold", ({ row }) =>
    when(below(row.number("minutes_camera_out"), CHECK_RULES.camera_out.value), "minutes_camera_out", () => ({
      minutes: row.number("minutes_camera_out") ?? NaN,
    })),
  ),
  caution("two-hot", (facts) => {
    const rise = facts.radiometry.riseOverLowest ?? NaN;
    const grade = gradeBy(facts.job, "similar", rise)?.grade;
    return when(isTwoHot(facts) && !isQualitative(facts), facts.hottest?.column ?? "", () => ({
      rise,
      grade: grade ?? "",
    }));
  }),
  caution("edge-within-u", (facts) => [...edgesNear(facts, "similar"), ...edgesNear(facts, "ambient")]),
  caution("too-sensitive", (facts) => {
    const { radiometry, isMeasured, hottest } = facts;
    const sensitivity = isMeasured && !isQualitative(facts) ? radiometry.sensitivity : undefined;
    return when(above(sensitivity, CHECK_RULES.sensitivity_most.value), hottest?.column ?? "", () => ({
      sensitivity: sensitivity ?? NaN,
    }));
  }),
  caution("far-projection", (facts) => {
    const { loadShare, minimumLoad } = facts;
    if (loadShare === undefined || isInOtherUnit(loadShare.ratio) || below(loadShare.ratio, minimumLoad)) return [];
    const exponent = facts.job.number("exponent_high") ?? RULES.exponent_high.value;
    const factor = loadShare.ratio ** -exponent;
    return when(above(factor, CHECK_RULES.extrapolation_most.value), loadShare.column, () => ({ factor, exponent }));
  }),
  caution("window-temp-not-measured", (facts) => {
    const { row, isMeasured, isThroughWindow, isException } = facts;
    // Of an exception an empty one is told as needed.
    const isUnknown = row.text("window_temp_from") === "assumed" || (!row.given("window_temp") && !isException);
    return when(isMeasured && isThroughWindow && isUnknown, "window_temp");
  }),
];

/** Below that emissivity there is no temperature to be had at all. */
function isQualitative({ emissivity }: RowFacts): boolean {
  return below(emissivity, CHECK_RULES.emissivity_qualitative.value);
}

/** Minutes that a load has to have stood: the asset's own, else its kind's, else the least of all kinds. */
function settlingOf(own: number | undefined, equipment = "panel"): number {
  const kinds = {
    panel: CHECK_RULES.settling_panel,
    motor: CHECK_RULES.settling_motor,
    "dry transformer": CHECK_RULES.settling_dry_transformer,
    "oil transformer": CHECK_RULES.settling_oil_transformer,
  };
  return own ?? kinds[equipment as keyof typeof kinds].value;
}

/** Edges of the job's criteria that lie within the uncertainty of an exception's rise: either grade may be right. */
function edgesNear(facts: RowFacts, reference: "similar" | "ambient"): readonly Hit[] {
  const { radiometry, isException, isDirect, imbalance = 0 } = facts;
  if (!isException || !isDirect || isQualitative(facts)) return [];
  // Phases with unequal currents are not compared as they are.
  if (reference === "similar" && above(imbalance, CHECK_RULES.imbalance_most.value)) return [];
  // Nor are phases that are all alike: that is no joint.
  if (reference === "similar" && radiometry.pattern === "balanced") return [];
  const rise = reference === "similar" ? radiometry.riseOverSimilar : radiometry.riseOverAir;
  if (rise === undefined || rise < 0) return [];
  const u = radiometry.uncertaintyOf(reference === "similar" ? "similar" : "air");
  const { lower, upper } = gradeBy(facts.job, reference, rise) ?? {};
  return [lower, upper].flatMap((edge) =>
    when(edge !== undefined && !above(Math.abs(edge.value - rise), u), edgeColumn(facts, reference), () => ({
      rise,
      u,
      edge: edge?.value ?? NaN,
      reference,
    })),
  );
}

function edgeColumn({ row, hottest }: RowFacts, reference: "similar" | "ambient"): string {
  const own = reference === "similar" ? "rise_similar" : "rise_air";
  return row.given(own) ? own : (hottest?.column ?? own);
}
