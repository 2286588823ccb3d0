import { CHECK_RULES } from "../../data/check-rules.js";
import { RULES } from "../../data/rules.js";
import { SUM_SLACK } from "../limits.js";
import type { RowFacts } from "./facts.js";
import { gradedNoException } from "./graded.js";
import { above, below, when } from "./hit.js";
import type { Hit } from "./hit.js";
import { IMPOSSIBLE } from "./impossible.js";
import type { Rule } from "./rule.js";
import { isInOtherUnit } from "./stops.js";

const implausible = (id: string, find: Rule["find"]): Rule => ({ id, kind: "implausible", find });

const MINUTES_A_DAY = 1440;

/** What cannot well be. */
export const IMPLAUSIBLE: readonly Rule[] = [
  implausible("load-too-high", ({ loadShare }) =>
    when(
      loadShare !== undefined && !isInOtherUnit(loadShare.ratio) && above(loadShare.ratio, CHECK_RULES.load_most.value),
      loadShare?.column ?? "",
      () => ({ ratio: loadShare?.ratio ?? NaN }),
    ),
  ),
  implausible("load-in-other-unit", ({ loadShare }) =>
    when(loadShare !== undefined && isInOtherUnit(loadShare.ratio), loadShare?.column ?? "", () => ({
      load: loadShare?.load ?? NaN,
      reference: loadShare?.reference ?? NaN,
    })),
  ),
  ...IMPOSSIBLE.map((id) =>
    implausible(id, ({ impossible }) => impossible.filter((one) => one.id === id).map(({ hit }) => hit)),
  ),
  implausible("window-sum", ({ row }) => {
    const [through, back] = [row.number("window_transmission"), row.number("window_reflectance")];
    const sum = (through ?? NaN) + (back ?? NaN);
    return when(sum > 1 + SUM_SLACK, "window_reflectance", () => ({ sum }));
  }),
  implausible("metal-too-black", ({ isBareMetal, emissivity, row }) =>
    when(isBareMetal && above(emissivity, CHECK_RULES.metal_emissivity_most.value), "emissivity", () => ({
      emissivity: emissivity ?? NaN,
      surface: row.text("surface") ?? row.text("material") ?? "",
    })),
  ),
  implausible("below-reflected", ({ isException, hottest, reflected }) =>
    when(
      isException && below(hottest?.value, (reflected ?? NaN) - CHECK_RULES.below_reflected.value),
      hottest?.column ?? "",
      () => ({ reading: hottest?.value ?? NaN, reflected: reflected ?? NaN }),
    ),
  ),
  implausible("graded-no-exception", gradedNoException),
  implausible("air-above-reference", airAboveReference),
  implausible("date-before-job", ({ ownDay, job, row }) =>
    when(below(ownDay, job.number("date")), row.given("date") ? "date" : "time", () => ({
      day: ownDay ?? NaN,
      job: job.number("date") ?? NaN,
    })),
  ),
  implausible("currents-late", ({ row }) => {
    const minutes = minutesApart(row.number("time"), row.number("amps_time"));
    return when(above(minutes, CHECK_RULES.current_late.value), "amps_time", () => ({ minutes: minutes ?? NaN }));
  }),
  implausible("colder-than-reference", ({ isException, isSingle, row }) => {
    const [hot, reference] = [row.number("reading"), row.number("reference")];
    const isColder = isException && isSingle && below(hot, (reference ?? NaN) - RULES.colder_than_similar.value);
    return when(isColder, "reading", () => ({ hot: hot ?? NaN, reference: reference ?? NaN }));
  }),
];

/** Warmer air than the cooler part: it was taken elsewhere, or one of the two is wrong. */
function airAboveReference({ readings, hottest, isSingle, row, radiometry }: RowFacts): readonly Hit[] {
  const others = isSingle ? readings.filter((one) => one !== hottest) : readings;
  const temperatures = others.map(({ value }) => radiometry.corrected(value) ?? value);
  const air = row.number("surrounding_air");
  if (air === undefined || temperatures.length === 0) return [];
  const coolest = Math.min(...temperatures);
  const reference = coolest + RULES.normal_below_air.value;
  return when(above(air, reference), "surrounding_air", () => ({ air, reference: coolest }));
}

/** Between two times, of which one or both may carry a day; without, over midnight too. */
function minutesApart(one: number | undefined, other: number | undefined): number | undefined {
  if (one === undefined || other === undefined) return undefined;
  if (one >= 1 && other >= 1) return Math.abs(one - other) * MINUTES_A_DAY;
  const apart = Math.abs((one % 1) - (other % 1));
  return Math.min(apart, 1 - apart) * MINUTES_A_DAY;
}
