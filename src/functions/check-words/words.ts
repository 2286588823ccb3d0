import type { Finding } from "../../core/check/hit.js";
import { CHECK_COLUMNS, JOB_LINES } from "../check-columns.js";
import type { Quantity } from "../contract.js";
import { dayInWords } from "../days.js";
import { fromSI, rangeInWords, readable, unitOf } from "../units.js";
import type { Units } from "../units.js";

/** How a finding's values are written in the units of the sheet. */
export interface CheckWords {
  readonly column: string;
  readonly text: (name: string) => string;
  readonly number: (name: string, digits?: number) => string;
  readonly percent: (name: string) => string;
  readonly temperature: (name: string) => string;
  readonly difference: (name: string) => string;
  readonly speed: (name: string) => string;
  readonly day: (name: string) => string;
  /** " (in °F 44 to 47 °C?)" where readings of a sheet in °C look like it; else nothing. */
  readonly fahrenheit: () => string;
  /** The value in the unit of the finding's own column. */
  readonly typed: () => string;
  /** What that column may hold, after a colon; nothing where it has no range. */
  readonly allowed: () => string;
}

type Say = string | ((w: CheckWords) => string);

/** What a finding says: what there is, why it matters, what to do. */
export interface FindingWords {
  readonly what: Say;
  readonly why: Say;
  readonly todo: Say;
}
export type WordsOfFindings = Readonly<Record<string, FindingWords>>;

/** No more decimals than a camera has. */
const decimals = (value: number, most: number): string => String(Number(value.toFixed(most)));

export function wordsOf({ column, values = {} }: Finding, units: Units): CheckWords {
  const number = (name: string): number => Number(values[name]);
  const inUnit =
    (quantity: Quantity, shown: (value: number) => string) =>
    (name: string): string => {
      const unit = unitOf(quantity, units);
      return `${shown(fromSI(number(name), unit))} ${unit.label}`.trim();
    };
  const isOfJob = column.startsWith("job_");
  const plain = isOfJob ? column.slice(4) : column;
  const spec = (isOfJob ? JOB_LINES : CHECK_COLUMNS).find(({ name }) => name === plain);
  const quantity = spec?.quantity ?? "number";
  return {
    column,
    text: (name) => String(values[name] ?? ""),
    number: (name, digits = 4) => readable(number(name), digits),
    percent: (name) => `${readable(number(name) * 100, 4)} %`,
    temperature: inUnit("temperature", (value) => decimals(value, 1)),
    difference: inUnit("difference", (value) => decimals(value, Math.abs(value) < 2 ? 2 : 1)),
    speed: inUnit("speed", (value) => decimals(value, 1)),
    day: (name) => dayInWords(number(name)),
    fahrenheit: () => {
      if (units !== "C" || values.fahrenheitLow === undefined) return "";
      const meant = inUnit("temperature", (value) => decimals(value, 0));
      return `; or typed in °F: ${meant("fahrenheitLow")} to ${meant("fahrenheitHigh")}?`;
    },
    typed: () => inUnit(quantity, readable)("value"),
    allowed: () => (spec?.range ? `: ${rangeInWords(spec.range, unitOf(quantity, units))}` : ""),
  };
}

export function told(what: Say, why: Say, todo: Say): FindingWords {
  return { what, why, todo };
}

export function say(words: Say, w: CheckWords): string {
  return typeof words === "string" ? words : words(w);
}
