import { noSolution } from "../correction/correct.js";
import { forward, invert, surroundings } from "../correction/equation.js";
import { completeSettings, requireTemperature } from "../correction/settings.js";
import type { Settings } from "../correction/settings.js";
import type { Band } from "../planck/band.js";
import { tableFor } from "../planck/tables.js";

/**
 * Temperature [K] that was reported under some settings, as it is under others: back to the signal the camera had, then
 * forward. With the same settings twice it is what was reported.
 * @param reported temperature of the object as it was reported [K]
 * @throws INVALID, NOT_GIVEN (which argument), NO_SOLUTION (under the right settings no object gives that signal)
 */
export function restate(reported: number, used: Settings, right: Settings, band: Band): number {
  requireTemperature("reported", reported);
  const [before, after] = [completeSettings(used), completeSettings(right)];
  const table = tableFor(band);
  const radianceOf = (t: number): number => table.radiance(t);
  const around = surroundings(after, radianceOf);
  const signal = forward(table.radiance(reported), before, surroundings(before, radianceOf));
  const { object } = invert(signal, after, around);
  if (!(object > 0 && object < Infinity)) {
    throw noSolution(table.temperature(signal), after, band, forward(0, after, around));
  }
  return table.temperature(object);
}
