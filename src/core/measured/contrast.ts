import { GreybodyError } from "../errors.js";

/** Slack of a contrast that should meet its least exactly (35.3 − 25.3) [K]. */
const CONTRAST_SLACK = 1e-9;

/**
 * What a measured transmission or emissivity lives on: two temperatures that lie apart, either way.
 * @param key of the hint, which is given `contrast` and `least` [K]
 * @throws REFUSED
 */
export function requireContrast(argument: string, given: number, other: number, least: number, key: string): void {
  const contrast = Math.abs(given - other);
  if (contrast >= least - CONTRAST_SLACK) return;
  throw new GreybodyError({ code: "REFUSED", argument, given, hint: { key, values: { contrast, least } } });
}
