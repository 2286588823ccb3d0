import { correctBlock } from "../correction/block.js";
import { correct } from "../correction/correct.js";
import type { CompleteSettings } from "../correction/settings.js";
import type { Band } from "../planck/band.js";
import { drawInputs } from "./draws.js";
import { completeReading } from "./inputs.js";
import type { InputName, UncertainReading } from "./inputs.js";
import { propagate } from "./propagate.js";
import type { Drawn, DrawOptions, Model } from "./propagate.js";

/**
 * Corrected temperature of a reading with uncertain inputs, by drawing from their distributions: mean, standard deviation
 * and coverage interval [K]. Beside first order, because that fails where little of the signal is the object's own.
 * A draw is rejected, never moved, where an input cannot be (emissivity, a transmission or the reflectance outside 0 to 1) or
 * where no object gives the reading, or only one above 10,000 °C; the share is returned. A window's transmission and reflectance may exceed 1 together by
 * chance: of a window that hardly emits it would be half the draws, and what is left would lie to one side.
 * Each reading starts anew from the seed: its answer hangs on itself alone, not on what stands beside it.
 * @throws as `completeReading`, `correct` (of the reading as it is) and `propagate`
 * Source: JCGM 101:2008; what goes together by `drawInputs`.
 */
export function monteCarlo(reading: UncertainReading, band: Band, options: DrawOptions = {}): Drawn {
  const { inputs, settings, correlation } = completeReading(reading);
  correct(reading.apparent, reading.settings, band);
  const places = inputs.flatMap(({ stated }, i) => (stated > 0 ? [i] : []));
  const uncertain = places.map((i) => inputs[i]!);
  const matrix = places.map((i) => places.map((j) => correlation[i]?.[j] ?? 0));
  const model = correctionOf(
    uncertain.map(({ name }) => name),
    reading.apparent,
    settings,
    band,
  );
  return propagate(uncertain.length, drawInputs(uncertain, matrix), model, options);
}

/** The correction with the columns of some inputs; the others stay as they are. */
function correctionOf(names: readonly InputName[], apparent: number, settings: CompleteSettings, band: Band): Model {
  return (columns, out) => {
    const varied: Partial<Record<InputName, Float64Array>> = {};
    for (const [i, name] of names.entries()) varied[name] = columns[i]!;
    const { apparent: readings = new Float64Array(out.length).fill(apparent), ...others } = varied;
    correctBlock(readings, { ...settings, ...others }, band, { temperature: out }, Infinity);
  };
}
