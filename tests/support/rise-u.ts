/**
 * Expanded uncertainty of a rise by differences of the corrected temperature, apart from the budget in src: each input is
 * moved by its standard uncertainty up and down, and half of what the rise moves by is its part. For readings up to 100 °C.
 */
import { ZERO_CELSIUS } from "../../src/core/constants.js";
import { correct } from "../../src/core/correction/correct.js";
import type { Settings } from "../../src/core/correction/settings.js";
import { DEFAULT_BAND } from "../../src/core/planck/band.js";

/** Of a normal distribution, 97.5 % of which lie below (any table). */
const K = 1.96;
/** Of each reading by itself, also within one image [K]; and the rest of a camera's ±2 K, rectangular. */
const OWN = 0.3;
const SHARED = Math.sqrt(4 / 3 - OWN ** 2);
/** Air by thermometer: ±1 K, rectangular. */
const THERMOMETER = 1 / Math.sqrt(3);

/** Standard uncertainties by the settings' names. */
export type Standard = Readonly<Partial<Record<keyof Settings, number>>>;

type Relation = "other surface" | "same surface" | "two images";

/** @param reading in °C, @returns °C */
function celsiusOf(reading: number, settings: Settings): number {
  return correct(reading + ZERO_CELSIUS, settings, DEFAULT_BAND).temperature - ZERO_CELSIUS;
}

function parts(reading: number, settings: Settings, standard: Standard): { slope: number; of: Map<string, number> } {
  const half = (up: number, down: number): number => (up - down) / 2;
  const of = new Map<string, number>();
  for (const [name, u] of Object.entries(standard) as [keyof Settings, number][]) {
    const at = (by: number): number => celsiusOf(reading, { ...settings, [name]: (settings[name] ?? NaN) + by * u });
    // A thousandth of it is small enough for a straight line; from 1 a fraction goes only down.
    const isWhole = settings[name] === 1;
    of.set(name, isWhole ? 1000 * (at(0) - at(-0.001)) : 1000 * half(at(0.001), at(-0.001)));
  }
  const slope = half(celsiusOf(reading + 0.01, settings), celsiusOf(reading - 0.01, settings)) * 100;
  return { slope, of };
}

const square = (values: readonly number[]): number => values.reduce((sum, value) => sum + value ** 2, 0);

/** Of one corrected temperature, expanded. */
export function readingU(reading: number, settings: Settings, standard: Standard): number {
  const { slope, of } = parts(reading, settings, standard);
  return K * Math.sqrt(square([slope * OWN, slope * SHARED, ...of.values()]));
}

export function overAirU(reading: number, settings: Settings, standard: Standard): number {
  return Math.hypot(readingU(reading, settings, standard), K * THERMOMETER);
}

export function overSimilarU(
  [hot, other]: readonly [number, number],
  settings: Settings,
  standard: Standard,
  relation: Relation,
): number {
  if (relation === "two images")
    return Math.hypot(readingU(hot, settings, standard), readingU(other, settings, standard));
  const [one, two] = [parts(hot, settings, standard), parts(other, settings, standard)];
  const ofSurface = ["emissivity", "reflected"];
  const rest = [...one.of].flatMap(([name, part]) => {
    const second = two.of.get(name) ?? 0;
    return relation === "other surface" && ofSurface.includes(name) ? [part, second] : [part - second];
  });
  return K * Math.sqrt(square([one.slope * OWN, two.slope * OWN, (one.slope - two.slope) * SHARED, ...rest]));
}
