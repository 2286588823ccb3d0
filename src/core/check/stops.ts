import { CHECK_RULES } from "../../data/check-rules.js";
import { RULES } from "../../data/rules.js";
import type { RowFacts } from "./facts.js";
import { above, below, when } from "./hit.js";
import type { Hit, HitValues } from "./hit.js";
import type { Rule } from "./rule.js";

const stop = (id: string, find: Rule["find"]): Rule => ({ id, kind: "stop", find });

/** A load that was typed in another unit than its reference is told as such, and then as nothing else. */
export function isInOtherUnit(ratio: number): boolean {
  return above(ratio, RULES.load_ratio_most.value) || (ratio > 0 && below(ratio, RULES.load_ratio_least.value));
}

function isBound({ row }: RowFacts, bound: string): readonly Hit[] {
  return when(row.text("reading_is") === bound, "reading_is");
}

/** What forbids a grade. */
export const STOPS: readonly Rule[] = [
  stop("spot-too-small", ({ spotMargin, isMeasured }) =>
    when(isMeasured && below(spotMargin, CHECK_RULES.spot_margin_least.value), "target_size", () => ({
      margin: spotMargin ?? NaN,
    })),
  ),
  stop("reading-at-least", (facts) => isBound(facts, "at least")),
  stop("reading-at-most", (facts) => isBound(facts, "at most")),
  stop("camera-settings-unknown", (facts) => {
    if (!facts.isMeasured || !facts.radiometry.isCorrectedInCamera) return [];
    const missing = ["set_emissivity", "set_reflected"].filter((name) => !facts.has(name));
    return when(missing.length > 0, missing[0] ?? "", () => ({ missing: missing.join(" and ") }));
  }),
  stop("called-apparent", (facts) => {
    if (!facts.isMeasured || facts.radiometry.isCorrectedInCamera) return [];
    const set = ["set_emissivity", "set_air_transmission", "set_window_transmission"].find((name) =>
      below(facts.own(name), 1),
    );
    return when(set !== undefined, "readings_are", () => ({ set: set ?? "", value: facts.own(set ?? "") ?? NaN }));
  }),
  stop("corrected-twice", correctedTwice),
  stop("no-current", (facts) => {
    if (!facts.isException || !facts.isDirect) return [];
    const missing = facts.currentColumns.filter((column) => !facts.row.given(column));
    return when(missing.length > 0, missing[0] ?? "", () => ({ missing: missing.join(", ") }));
  }),
  stop("load-below-least", ({ loadShare, minimumLoad }) =>
    when(
      loadShare !== undefined && !isInOtherUnit(loadShare.ratio) && below(loadShare.ratio, minimumLoad),
      loadShare?.column ?? "",
      () => ({ ratio: loadShare?.ratio ?? NaN, least: minimumLoad }),
    ),
  ),
  stop("calibration-out", ({ calibratedUntil, ownDay, isMeasured }) =>
    when(isMeasured && below(calibratedUntil, ownDay), "date", () => ({ until: calibratedUntil ?? NaN })),
  ),
  stop("outside-camera-range", outsideCameraRange),
  stop("wind-too-strong", ({ row }) =>
    when(above(row.number("wind"), RULES.wind_most.value), "wind", () => ({
      wind: row.number("wind") ?? NaN,
      most: RULES.wind_most.value,
    })),
  ),
];

/** A corrected temperature that comes out when the camera's own result is corrected once more. */
function correctedTwice({ row, readings, radiometry }: RowFacts): readonly Hit[] {
  if (!radiometry.isCorrectedInCamera) return [];
  const apart = CHECK_RULES.corrected_twice.value;
  return readings.flatMap(({ column, value }) => {
    const typed = row.number(`corrected_${column}`);
    const [right, twice] = [radiometry.corrected(value), radiometry.correctedOnce(value)];
    if (typed === undefined || right === undefined || twice === undefined) return [];
    const isTwice = Math.abs(twice - right) >= apart && Math.abs(typed - twice) < apart / 5;
    return when(isTwice, `corrected_${column}`, () => ({ reading: column, typed, right }));
  });
}

/** The camera's range is one of apparent temperatures. */
function outsideCameraRange({ readings, job, radiometry }: RowFacts): readonly Hit[] {
  const [from, to] = [job.number("range_from"), job.number("range_to")];
  if (radiometry.isCorrectedInCamera) return [];
  return readings.flatMap(({ column, value }) => {
    const values = (end: string, limit: number | undefined) => (): HitValues => ({
      reading: value,
      end,
      limit: limit ?? NaN,
    });
    return [
      ...when(below(value, from), column, values("from", from)),
      ...when(above(value, to), column, values("to", to)),
    ];
  });
}
