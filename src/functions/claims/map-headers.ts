/** Which of a client's columns is which of ours, from names, units and what stands below. A doubtful one is told and not taken. */
import type { ReferenceKind } from "../../data/criteria.js";
import { AUDIT_COLUMNS } from "../audit-columns.js";
import { cellText, plainName } from "../check-names.js";
import type { Cell, Quantity } from "../contract.js";
import { plainNumber } from "../numbers.js";
import { unitWritten, writtenNumber } from "./claim-number.js";
import { choiceMeant } from "./claim-words.js";
import { readHeader } from "./header-tokens.js";
import { PHRASES } from "./header-words.js";

export interface MappedHeader {
  /** As the client has it. */
  readonly header: string;
  /** From 0, in the client's table. */
  readonly at: number;
  /** Our column; undefined where it is not taken. */
  readonly column?: string;
  /** As the client has it, where there is one. */
  readonly unit?: string;
  readonly how?: "our name" | "name" | "name and unit" | "as told";
  /** What the rise is over, where the header says it. */
  readonly over?: ReferenceKind;
  /** Why it is not taken. */
  readonly why?: string;
}

export interface Told {
  /** Ours, or undefined for none. */
  readonly column: string | undefined;
  readonly over?: ReferenceKind;
}

/** Texts of which any may stand: the first of several is taken, since they only name the row. */
const NAMES_A_ROW = new Set(["item", "image", "material"]);
/** Of the cells of a column of numbers that must be numbers. */
const MOSTLY = 0.6;
/** Units that fit a quantity beside those that are converted. */
const PLAIN_UNITS: Readonly<Partial<Record<Quantity, RegExp>>> = { current: /^%$|^pct$/i };

/** A header with one of these says of itself what is measured. */
const SAYS_WHAT = new Set(
  "temp delta rise difference reading ambient air reflected background apparent raw indicated uncorrected".split(" "),
);

const specOf = (name: string) => AUDIT_COLUMNS.find((one) => one.name === name);

function unitFits(name: string, unit: string): boolean {
  const quantity = specOf(name)?.quantity ?? "text";
  return unitWritten(quantity, unit) !== undefined || PLAIN_UNITS[quantity]?.test(unit) === true;
}

/** Whether what stands below can be what the column holds. */
function cellsFit(name: string, cells: readonly Cell[]): boolean {
  const { quantity = "text", choices } = specOf(name) ?? {};
  const known = cells.filter((cell) => cellText(cell) !== "");
  if (known.length === 0) return true;
  const fitting = known.filter((cell) => {
    const text = cellText(cell);
    const isNumber = plainNumber(text) !== undefined;
    if (name === "stated_grade") return /\d/.test(text);
    if (choices !== undefined)
      return choices.some((one) => one.toLowerCase() === text.toLowerCase()) || choiceMeant(name, text) !== undefined;
    if (quantity === "text" || quantity === "date") return quantity === "date" || !isNumber || NAMES_A_ROW.has(name);
    const written = isNumber ? undefined : writtenNumber(text, quantity, "C");
    return isNumber || (written !== undefined && !("because" in written));
  });
  return fitting.length >= MOSTLY * known.length;
}

interface Candidate {
  readonly names: readonly string[];
  readonly over?: ReferenceKind;
  readonly isOurs: boolean;
}

const sameWords = (words: ReadonlySet<string>, phrase: readonly string[]): boolean =>
  words.size === new Set(phrase).size && phrase.every((word) => words.has(word));

function candidate(header: string, words: ReadonlySet<string>): Candidate | undefined {
  // "Reference load" is no name of ours, though reference_load is one.
  const own = AUDIT_COLUMNS.find(({ name }) => name === plainName(header) && header.trim().startsWith(name));
  if (own !== undefined) return { names: [own.name], isOurs: true };
  const [first, ...rest] = PHRASES.filter((phrase) => sameWords(words, phrase.words));
  if (first === undefined) return undefined;
  const names = [...new Set([first, ...rest].flatMap((phrase) => phrase.names))];
  return { names, isOurs: false, ...(first.over === undefined ? {} : { over: first.over }) };
}

/** Ours that share a word with the header, the most alike first. */
function alike(words: ReadonlySet<string>): string[] {
  const scored = PHRASES.map(({ words: phrase, names }) => ({
    names,
    score: phrase.filter((word) => words.has(word)).length / Math.max(words.size, phrase.length),
  }));
  const best = Math.max(0, ...scored.map(({ score }) => score));
  if (best < 0.5) return [];
  return [...new Set(scored.filter(({ score }) => score === best).flatMap(({ names }) => names))]
    .filter((name) => name !== "none")
    .slice(0, 3);
}

const either = (names: readonly string[]): string => names.filter((name) => name !== "none").join(" or ");

interface Column {
  readonly header: string;
  readonly unit: string | undefined;
  readonly cells: readonly Cell[];
  readonly told: Told | undefined;
}

/** "Spot (°C)" is a temperature, though it does not say so. */
function withTemperature(words: ReadonlySet<string>, unit: string | undefined): ReadonlySet<string> {
  const isTemperature = unit !== undefined && !/^k$/i.test(unit) && unitWritten("temperature", unit) !== undefined;
  return isTemperature && words.size > 0 && ![...words].some((word) => SAYS_WHAT.has(word))
    ? new Set([...words, "temp"])
    : words;
}

function mapOne({ header, unit: below, cells, told }: Column, at: number): MappedHeader {
  const { words, unit: own } = readHeader(header);
  const unit = own ?? below;
  const base = { header, at, ...(unit === undefined ? {} : { unit }) };
  if (told !== undefined) {
    if (told.column === undefined) return { ...base, why: "left out, as told" };
    return { ...base, column: told.column, how: "as told", ...(told.over === undefined ? {} : { over: told.over }) };
  }
  const found = candidate(header, words) ?? candidate(header, withTemperature(words, unit));
  if (found === undefined) {
    const isPhase = [...words].some((word) => /^(?:phase|pole|left|middle|right|l[123])$/.test(word));
    if (isPhase && words.size > 1)
      return { ...base, why: "a row has one hot spot and what it is compared with: name those two" };
    const near = alike(words);
    return { ...base, why: near.length === 0 ? "nothing of ours" : `doubtful: may be ${either(near)}` };
  }
  const open = found.names.length > 1;
  const fitting = found.names.filter(
    (name) => name === "none" || ((unit === undefined || unitFits(name, unit)) && cellsFit(name, cells)),
  );
  // A unit that fits says that it is one of ours.
  const none = fitting.indexOf("none");
  if (unit !== undefined && fitting.length > 1 && none >= 0) fitting.splice(none, 1);
  const [name] = fitting;
  if (name === undefined) {
    const isUnit = unit !== undefined && !found.names.some((one) => unitFits(one, unit));
    const what = either(found.names);
    return { ...base, why: isUnit ? `the unit ${unit} is none of ${what}` : `what stands below is no ${what}` };
  }
  if (fitting.length > 1) return { ...base, why: `doubtful: may be ${either(fitting)}` };
  if (name === "none") return { ...base, why: `what stands below is no ${either(found.names)}` };
  const how = found.isOurs ? "our name" : open || unit !== undefined ? "name and unit" : "name";
  return { ...base, column: name, how, ...(found.over === undefined ? {} : { over: found.over }) };
}

/**
 * @param columns of the client's table, with some of what stands below each
 */
export function mapHeaders(columns: readonly Column[]): MappedHeader[] {
  const mapped = columns.map(mapOne);
  return mapped.map((one, at) => {
    const { column } = one;
    if (column === undefined || one.how === "as told") return one;
    const same = mapped.filter((other) => other.column === column && other.over === one.over);
    const told = mapped.find((other) => other.column === column && other.how === "as told");
    const ours = same.find(({ how }) => how === "our name");
    if (told !== undefined && (told.over === one.over || told.over === undefined || one.over === undefined))
      return notTaken(one, `${column} is "${told.header}", as told`);
    if (same.length === 1 || one === ours) return one;
    if (ours !== undefined) return notTaken(one, `${column} is "${ours.header}"`);
    if (!NAMES_A_ROW.has(column))
      return notTaken(one, `doubtful: ${same.map(({ header }) => `"${header}"`).join(" and ")} may be ${column}`);
    return same[0]?.at === at ? one : notTaken(one, `${column} is "${same[0]!.header}"`);
  });
}

function notTaken({ header, at, unit }: MappedHeader, why: string): MappedHeader {
  return { header, at, ...(unit === undefined ? {} : { unit }), why };
}
