import { MATERIALS } from "../../data/emissivity.js";
import type { EmissivityColumn, EmissivityRange, Material } from "../../data/emissivity.js";
import { RULES } from "../../data/rules.js";
import { GreybodyError } from "../errors.js";
import { nearestByWord } from "../nearest.js";
import type { Band } from "../planck/band.js";

/** Bands that a column speaks for [µm]: what cameras of that name see, a little wider than what it was measured in. */
const LONG_WAVE = { from: RULES.emissivity_long_from.value, to: RULES.emissivity_long_to.value };
const SHORT_WAVE = { from: RULES.emissivity_short_from.value, to: RULES.emissivity_short_to.value };
const METRES = 1e-6;
const SLACK = 1e-12;

/** An emissivity as the table has it. */
export interface FoundEmissivity {
  readonly material: Material;
  readonly range: EmissivityRange;
  /** True where the total emissivity stands for the long wave, for which the table has none. */
  readonly totalForLong: boolean;
}

/** A material by its exact name, in any case. @throws REFUSED "material", with the names near it */
function materialNamed(name: string): Material {
  const wanted = name.trim().toLowerCase();
  const found = MATERIALS.find(({ material }) => material.toLowerCase() === wanted);
  if (found) return found;
  const near = nearestByWord(
    name,
    MATERIALS.map(({ material }) => material),
  );
  const hint = { key: near.length > 0 ? "material-near" : "material-unknown", values: { name, near: near.join("; ") } };
  throw new GreybodyError({ code: "REFUSED", argument: "material", given: name, hint });
}

/** The columns that speak for a band, the better first; none for a band between or beyond. */
export function columnsFor(band: Band): readonly EmissivityColumn[] {
  const seen = band.segments.filter(({ responseLo, responseHi }) => responseLo > 0 || responseHi > 0);
  const within = ({ from, to }: typeof LONG_WAVE): boolean =>
    seen.every(({ lo, hi }) => lo >= from * METRES - SLACK && hi <= to * METRES + SLACK);
  // Near room temperature what is radiated in all is mostly long wave, so the total serves there; in the short wave it does not.
  if (within(LONG_WAVE)) return ["long", "total"];
  return within(SHORT_WAVE) ? ["short"] : [];
}

/**
 * The range of a material's emissivity in a band.
 * @throws REFUSED "material" for an unknown one, "band" where the table has none for it
 */
export function emissivityIn(name: string, band: Band): FoundEmissivity {
  const material = materialNamed(name);
  const columns = columnsFor(band);
  if (columns.length === 0) {
    const values = {
      ...{ long_from: LONG_WAVE.from, long_to: LONG_WAVE.to },
      ...{ short_from: SHORT_WAVE.from, short_to: SHORT_WAVE.to },
    };
    throw new GreybodyError({ code: "REFUSED", argument: "band", hint: { key: "emissivity-no-column", values } });
  }
  for (const column of columns) {
    const range = material.ranges.find((one) => one.band === column);
    if (range) return { material, range, totalForLong: columns[0] === "long" && column === "total" };
  }
  const values = { material: material.material, has: material.ranges.map((one) => NAMES[one.band]).join(" and ") };
  throw new GreybodyError({ code: "REFUSED", argument: "band", hint: { key: "emissivity-not-in-band", values } });
}

const NAMES: Readonly<Record<EmissivityColumn, string>> = {
  total: "total emissivity",
  long: "the long wave",
  short: "the short wave",
};

/**
 * The middle of the range.
 * @throws REFUSED "material" for bare metal and whatever else only a measurement can tell
 */
export function middleOf({ material, range }: FoundEmissivity): number {
  if (material.kind !== "bare metal" && material.measure !== true) return (range.low + range.high) / 2;
  const key = material.kind === "bare metal" ? "emissivity-bare-metal" : "emissivity-measure";
  const values = { material: material.material, low: range.low, high: range.high };
  throw new GreybodyError({ code: "REFUSED", argument: "material", given: material.material, hint: { key, values } });
}
