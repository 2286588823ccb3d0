import { correct } from "../correction/correct.js";
import { requireTemperature } from "../correction/settings.js";
import { GreybodyError, requireInRange } from "../errors.js";
import { DEGREE_SLIPS, FORMULA_SLIPS } from "./formula-slips.js";
import { DEFAULT_TOLERANCE, judge, TOLERANCE } from "./judge.js";
import type { Candidate, Explanation } from "./judge.js";
import { SETTING_SLIPS } from "./setting-slips.js";
import type { TemperatureCase, TemperatureSlip } from "./temperature-case.js";

type KeyOf<Slips extends readonly { readonly key: string }[]> = Slips[number]["key"];
export type TemperatureSlipKey = KeyOf<typeof SETTING_SLIPS> | KeyOf<typeof FORMULA_SLIPS> | KeyOf<typeof DEGREE_SLIPS>;
/** The inputs as stated. */
export const AS_STATED = "as-stated";

/** The usual slips of a corrected temperature; of two that come to the same in all, the simpler stands first. */
export const TEMPERATURE_SLIPS: readonly TemperatureSlip<TemperatureSlipKey>[] = [
  ...FORMULA_SLIPS,
  ...SETTING_SLIPS,
  ...DEGREE_SLIPS,
];

/** What the settings as stated give; without a value where no object gives the reading. @throws INVALID, NOT_GIVEN */
function asStated({ apparent, settings, band }: TemperatureCase): Candidate<typeof AS_STATED> {
  try {
    return { key: AS_STATED, gives: correct(apparent, settings, band).temperature };
  } catch (error) {
    if (error instanceof GreybodyError && error.code === "NO_SOLUTION") return { key: AS_STATED, gives: undefined };
    throw error;
  }
}

/**
 * Which usual slips would give a stated temperature.
 * @param stated [K]
 * @param tolerance [K], half the last digit stated; 0.05 K where absent
 * @throws INVALID, NOT_GIVEN: the case itself cannot be
 */
export function explain(
  stated: number,
  given: TemperatureCase,
  tolerance = DEFAULT_TOLERANCE,
): Explanation<TemperatureSlipKey | typeof AS_STATED> {
  requireTemperature("stated", stated);
  requireInRange("tolerance", tolerance, TOLERANCE);
  const slips = TEMPERATURE_SLIPS.map(({ key, apply }) => ({ key, gives: apply(given) }));
  return judge<TemperatureSlipKey | typeof AS_STATED>(stated, asStated(given), slips, tolerance);
}

/**
 * What a reading rounded to the digit printed may move the corrected temperature by [K]: more than half that digit where
 * the correction stretches it. 0 where there is no corrected temperature.
 * @param half half the last digit of the reading [K]
 */
export function rangeOfReading(given: TemperatureCase, half: number): number {
  const middle = asStated(given).gives;
  if (middle === undefined) return 0;
  const moved = [given.apparent - half, given.apparent + half].map(
    (apparent) => asStated({ ...given, apparent }).gives ?? middle,
  );
  return Math.max(...moved.map((temp) => Math.abs(temp - middle)));
}
