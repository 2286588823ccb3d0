import { ZERO_CELSIUS } from "../core/constants.js";
import type { Range } from "../core/errors.js";
import type { Quantity } from "./contract.js";

/** The sheet's system of units: the last argument of a function, never a hidden setting. */
export type Units = "C" | "F";

/** si = (value + shift)·scale; value = si·back − shift. Both factors stand here because 9/5 is exact and 1/(5/9) is not. */
export interface Unit {
  readonly label: string;
  readonly shift: number;
  readonly scale: number;
  readonly back: number;
}

const plain = (label: string): Unit => scaled(label, 1);
const scaled = (label: string, scale: number, back = 1 / scale): Unit => ({ label, shift: 0, scale, back });
const same = (unit: Unit): Record<Units, Unit> => ({ C: unit, F: unit });

const UNITS: Record<Quantity, Record<Units, Unit>> = {
  temperature: {
    C: { ...plain("°C"), shift: ZERO_CELSIUS },
    F: { ...scaled("°F", 5 / 9, 9 / 5), shift: 459.67 },
  },
  difference: { C: plain("K"), F: scaled("°F", 5 / 9, 9 / 5) },
  distance: { C: plain("m"), F: scaled("ft", 0.3048) },
  length: { C: scaled("mm", 0.001, 1000), F: scaled("in", 0.0254) },
  angle: same(scaled("mrad", 0.001, 1000)),
  speed: { C: plain("m/s"), F: scaled("mph", 0.44704) },
  date: same(plain("")),
  fraction: same(plain("")),
  percent: same(scaled("%", 0.01)),
  pressure: same(scaled("kPa", 1000)),
  current: same(plain("")),
  radiance: same(plain("W/(m²·sr)")),
  number: same(plain("")),
  text: same(plain("")),
  band: same(scaled("µm", 1e-6)),
  table: same(plain("")),
};

export function unitOf(quantity: Quantity, units: Units): Unit {
  return UNITS[quantity][units];
}

export function toSI(value: number, unit: Unit): number {
  return (value + unit.shift) * unit.scale;
}

export function fromSI(value: number, unit: Unit): number {
  return value * unit.back - unit.shift;
}

/** A number as a person reads it: at most `digits` significant, no trailing noise. */
export function readable(value: number, digits = 6): string {
  return String(Number(value.toPrecision(digits)));
}

/** A range in words, in the unit of the sheet: "above 0, up to 1", "-45 to 65 °C". */
export function rangeInWords(range: Range, unit: Unit): string {
  const show = (si: number): string => readable(fromSI(si, unit));
  const { min, max } = range;
  if (min !== undefined && min === max) return show(min) + (unit.label && ` ${unit.label}`);
  const from =
    min === undefined
      ? ""
      : range.minExcluded === true
        ? `above ${show(min)}`
        : max === undefined
          ? `${show(min)} or more`
          : show(min);
  const to =
    max === undefined
      ? ""
      : range.maxExcluded === true
        ? `below ${show(max)}`
        : min === undefined
          ? `up to ${show(max)}`
          : show(max);
  const joined =
    from && to
      ? range.minExcluded === true || range.maxExcluded === true
        ? `${from}, ${to.startsWith("below") ? to : `up to ${to}`}`
        : `${from} to ${to}`
      : from || to;
  return unit.label ? `${joined} ${unit.label}` : joined;
}
