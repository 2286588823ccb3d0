/** Numbers as people write them into reports: "58,2 °C", "136.8 F", ">150", "~60 A". What is not certain is told, never guessed. */
import { ZERO_CELSIUS } from "../../core/constants.js";
import type { Quantity } from "../contract.js";
import { fromSI, type Unit, unitOf, type Units } from "../units.js";

export interface WrittenNumber {
  /** In the unit of the sheet. */
  readonly value: number;
  /** Half of the last digit that is written, in the unit of the sheet. */
  readonly half: number;
  /** Of a reading beyond an end of the camera's range. */
  readonly bound?: "at least" | "at most";
  readonly isAbout: boolean;
}

export interface NotWritten {
  /** Why it is no number, in words. */
  readonly because: string;
}

/** What is written before a number. */
const BEFORE: readonly (readonly [RegExp, "at least" | "at most" | "about"])[] = [
  [/^(?:>=?|≥|over |above |more than |at least )\s*/i, "at least"],
  [/^(?:<=?|≤|under |below |less than |at most )\s*/i, "at most"],
  [/^(?:~|≈|about |approx\.? |approximately |circa |ca\.? |c\. )\s*/i, "about"],
];

const scaled = (scale: number, shift = 0): Unit => ({ label: "", shift, scale, back: 1 / scale });
const KELVIN_DIFFERENCE = scaled(1);
const FAHRENHEIT_DIFFERENCE = scaled(5 / 9);

/** Units that are written behind a number of a quantity, each with its way to SI. */
const UNITS: Readonly<Partial<Record<Quantity, readonly (readonly [RegExp, Unit])[]>>> = {
  temperature: [
    [/^(?:[°º˚]|deg(?:rees?)?\.?)?\s*(?:c|celsius)$|^℃$/i, scaled(1, ZERO_CELSIUS)],
    [/^(?:[°º˚]|deg(?:rees?)?\.?)?\s*(?:f|fahrenheit)$|^℉$/i, scaled(5 / 9, 459.67)],
    [/^k(?:elvin)?$/i, scaled(1)],
  ],
  difference: [
    [/^(?:[°º˚]|deg(?:rees?)?\.?)?\s*(?:c|k|celsius|kelvin)$|^℃$/i, KELVIN_DIFFERENCE],
    [/^(?:[°º˚]|deg(?:rees?)?\.?)?\s*(?:f|fahrenheit)$|^℉$/i, FAHRENHEIT_DIFFERENCE],
  ],
  distance: [
    [/^(?:m|met(?:er|re)s?)$/i, scaled(1)],
    [/^cm$/i, scaled(0.01)],
    [/^mm$/i, scaled(0.001)],
    [/^(?:ft|feet|foot|'|′)$/i, scaled(0.3048)],
    [/^(?:in|inch(?:es)?|"|″)$/i, scaled(0.0254)],
  ],
  current: [
    [/^(?:a|amps?|amperes?)$/i, scaled(1)],
    [/^ka$/i, scaled(1000)],
    [/^ma$/i, scaled(0.001)],
  ],
  percent: [[/^(?:%|pct|percent|per cent)(?:\s*r\.?h\.?)?$|^r\.?h\.?$/i, scaled(0.01)]],
  fraction: [[/^(?:%|pct|percent|per cent)$/i, scaled(0.01)]],
  number: [],
};

/** Which of our quantities may be written with a unit behind them. */
export function unitWritten(quantity: Quantity, text: string): Unit | undefined {
  return UNITS[quantity]?.find(([pattern]) => pattern.test(text.trim()))?.[1];
}

/** Digits with their marks, then whatever stands behind. A minus may be the mathematical one. */
const NUMBER = /^([+-]?)\s*(\d[\d.,\u0020'’]*\d|\d|[.,]\d+)\s*(.*)$/su;

/** Thousands parted by one mark: "1 250,5", "12'500". */
const PARTED = /^\d{1,3}(?:([ '’])\d{3}(?:\1\d{3})*)(?:[.,]\d+)?$/u;
/** Groups that may as well be numbers side by side: only one digit before a single group is plainly a thousand. */
const SPACED = /^(?:\d{2,3} \d{3}|\d{1,3}(?: \d{3}){2,})$/;
/** No number with its unit is longer; what is would only cost time. */
const LONGEST = 80;

interface Digits {
  readonly text: string;
}

/** Plain digits with a point, or why they cannot be told. */
function plainDigits(written: string): Digits | NotWritten {
  const isParted = /[ '’]/u.test(written);
  if (isParted && !PARTED.test(written)) return { because: "more than one number" };
  // "118 120 121" is what three phases carry sooner than millions.
  if (SPACED.test(written)) return { because: "the space may part thousands or two numbers" };
  const text = written.replaceAll(/[ '’]/gu, "");
  const points = text.split(".").length - 1;
  const commas = text.split(",").length - 1;
  if (commas === 0 && points <= 1) return { text };
  if (commas === 1 && points === 0) {
    if (/^[1-9]\d{0,2},\d{3}$/.test(text)) return { because: "the comma may part thousands or decimals" };
    return { text: text.replace(",", ".") };
  }
  // Several of one mark part thousands; of both marks the last one parts the decimals.
  for (const plain of [/^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/, /^\d{1,3}(?:\.\d{3})+(?:,\d+)?$/]) {
    if (!plain.test(text)) continue;
    const group = /[.,]/.exec(text)![0];
    return { text: text.replaceAll(group, "").replace(",", ".") };
  }
  return { because: "its points and commas do not fit" };
}

/** Half of the last digit; of a number that is only about right, of the last one that is not 0. */
function halfDigit(digits: string, isAbout: boolean): number {
  const [whole = "", fraction = ""] = digits.split(".");
  if (fraction !== "" || !isAbout) return 0.5 * 10 ** -fraction.length;
  const zeros = /^\d*?[1-9](0*)$/.exec(whole)?.[1]?.length ?? 0;
  return 0.5 * 10 ** zeros;
}

/**
 * A text as a number of a quantity, in the unit of the sheet where it names another one.
 * @returns undefined where it holds no digit, so that it is a word and no number
 */
export function writtenNumber(text: string, quantity: Quantity, units: Units): WrittenNumber | NotWritten | undefined {
  let rest = text
    .normalize("NFC")
    .replaceAll(/[\u00a0\u2007\u2009\u202f]/gu, " ")
    .replaceAll("−", "-")
    .trim();
  const known = UNITS[quantity];
  if (known === undefined || !/\d/.test(rest)) return undefined;
  if (rest.length > LONGEST) return { because: "too long for a number" };
  const before = BEFORE.find(([pattern]) => pattern.test(rest));
  if (before !== undefined) rest = rest.replace(before[0], "");
  const [, sign = "", written = "", behind = ""] = NUMBER.exec(rest) ?? [];
  if (written === "") return { because: "no number" };
  const digits = plainDigits(written.trim());
  if ("because" in digits) return digits;
  const isPlus = /^\+|\+$/.test(behind.trim());
  const suffix = behind.replaceAll("+", "").trim();
  const own = unitOf(quantity, units);
  const unit = suffix === "" ? own : unitWritten(quantity, suffix);
  if (unit === undefined)
    return { because: /\d/.test(suffix) ? "more than one number" : `the unit "${suffix}" is not known here` };
  const kind = before?.[1] ?? (isPlus ? "at least" : undefined);
  const isAbout = kind === "about";
  const number = Number(`${sign}${digits.text.startsWith(".") ? "0" : ""}${digits.text}`);
  // As written where the unit is the sheet's: a way to SI and back would change the last digits.
  const isSame = unit.scale === own.scale && unit.shift === own.shift;
  const value = isSame ? number : fromSI((number + unit.shift) * unit.scale, own);
  const half = halfDigit(digits.text, isAbout) * unit.scale * own.back;
  if (kind === undefined || isAbout) return { value, half, isAbout };
  if (quantity !== "temperature" && quantity !== "difference") return { because: `"${kind}" is no value` };
  return { value, half, isAbout, bound: kind };
}
