/** Which of a client's columns is which of ours, from names, units and what stands below. A doubtful one is told and not taken. */
import type { ReferenceKind } from "../../data/criteria.js";
import { AUDIT_COLUMNS } from "../audit-columns.js";
import { cellText, plainName } from "../check-names.js";
import type { Cell, Quantity } from "../contract.js";
import { plainNumber } from "../numbers.js";
import { unitWritten, writtenNumber } from "./claim-number.js";
import { choiceMeant } from "./claim-words.js";
import { readHeader } from "./header-tokens.js";
import { type Phrase, PHRASES } from "./header-words.js";

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

/** A header that was taken for a column. */
export type Taken = MappedHeader & { readonly column: string };

/** Headers are told apart without case and without how their lines are broken. */
export const headerKey = (header: string): string => header.trim().replaceAll(/\s+/g, " ").toLowerCase();

export interface Told {
  /** Ours, or undefined for none. */
  readonly column: string | undefined;
  readonly over?: ReferenceKind;
}

/** Texts of which any may stand: the first of several is taken, since they only name the row. */
const NAMES_A_ROW = new Set(["item", "image", "material"]);
/** Of the cells of a column of numbers that must be numbers. */
const MOSTLY = 0.6;
/** Units that fit a quantity beside those that are converted; "% of rated" is no rating. */
const PLAIN_UNITS: Readonly<Partial<Record<Quantity, RegExp>>> = { current: /^%$|^pct$/i };

/** A header with one of these says of itself what is measured. */
const SAYS_WHAT = new Set(
  "temp delta rise difference reading ambient air reflected background apparent raw indicated uncorrected".split(" "),
);

/** A longer text is no header, and would only cost time. */
const LONGEST = 200;
/** Of the words of a header that is like a phrase. */
const LEAST_ALIKE = 0.5;
/** Of headers that may all be one column. */
const MOST_NAMED = 4;

const specOf = (name: string) => AUDIT_COLUMNS.find((one) => one.name === name);

function unitFits(name: string, unit: string): boolean {
  const quantity = specOf(name)?.quantity ?? "text";
  return (
    unitWritten(quantity, unit) !== undefined || (name !== "rated_load" && PLAIN_UNITS[quantity]?.test(unit) === true)
  );
}

/** Whether what stands below can be what the column holds. */
function cellsFit(name: string, cells: readonly Cell[]): boolean {
  const { quantity = "text", choices } = specOf(name) ?? {};
  const known = cells.filter((cell) => cellText(cell) !== "");
  if (known.length === 0) return true;
  // Rows that are only numbered are not named by that.
  if (name === "item" && known.length > 1 && known.every((cell, at) => Number(cellText(cell)) === at + 1)) return false;
  const fitting = known.filter((cell) => {
    const text = cellText(cell);
    if (name === "stated_grade") return true;
    const bare = quantity === "current" ? text.replace(/%$/, "").trim() : text;
    const isNumber = plainNumber(bare) !== undefined;
    if (choices !== undefined)
      return choices.some((one) => one.toLowerCase() === text.toLowerCase()) || choiceMeant(name, text) !== undefined;
    if (quantity === "text" || quantity === "date") return quantity === "date" || !isNumber || NAMES_A_ROW.has(name);
    const written = isNumber ? undefined : writtenNumber(bare, quantity, "C");
    return isNumber || (written !== undefined && !("because" in written));
  });
  return fitting.length >= MOSTLY * known.length;
}

/** What numbers its rows: "Hot spot no." is no temperature, "N°" no exponent. */
const NUMBERS = /(?:^|[^\p{L}])(?:no|nr|num|number|n[°º˚])(?=$|[^\p{L}])|#/iu;
const MAY_BE_NUMBERED = new Set([...NAMES_A_ROW, "stated_grade"]);

interface Candidate {
  readonly names: readonly string[];
  readonly over?: ReferenceKind;
  readonly isOurs: boolean;
}

/** Words that by themselves are like nothing in particular. */
const GENERIC = new Set("temp delta difference max value reading phase component level fault point id".split(" "));

const keyOf = (words: Iterable<string>): string => [...new Set(words)].sort().join(" ");
const BY_WORDS = new Map<string, Phrase[]>();
for (const phrase of PHRASES) BY_WORDS.set(keyOf(phrase.words), [...(BY_WORDS.get(keyOf(phrase.words)) ?? []), phrase]);
const KNOWN_WORDS = new Set(PHRASES.flatMap(({ words }) => words));

function candidate(header: string, words: ReadonlySet<string>): Candidate | undefined {
  // "Reference load" is no name of ours, though reference_load is one.
  const plain = plainName(header);
  const own = AUDIT_COLUMNS.find(({ name }) => name === plain && header.trim().startsWith(name));
  if (own !== undefined) return { names: [own.name], isOurs: true };
  const [first, ...rest] = BY_WORDS.get(keyOf(words)) ?? [];
  if (first === undefined) return undefined;
  const meant = [...new Set([first, ...rest].flatMap((phrase) => phrase.names))];
  const names = NUMBERS.test(header) ? meant.filter((name) => MAY_BE_NUMBERED.has(name)) : meant;
  if (names.length === 0) return undefined;
  return { names, isOurs: false, ...(first.over === undefined ? {} : { over: first.over }) };
}

/** Ours that share a word with the header, the most alike first. */
function alike(words: ReadonlySet<string>): string[] {
  const shared = [...words].filter((word) => KNOWN_WORDS.has(word));
  if (shared.length < words.size * LEAST_ALIKE || shared.every((word) => GENERIC.has(word))) return [];
  const scored = PHRASES.map(({ words: phrase, names }) => ({
    names,
    score: phrase.filter((word) => words.has(word)).length / Math.max(words.size, phrase.length),
    // A header that holds all of it says more than one that only shares a word with it.
    isWhole: phrase.every((word) => words.has(word)),
  })).filter(({ score }) => score >= LEAST_ALIKE);
  const isAnyWhole = scored.some(({ isWhole }) => isWhole);
  const fitting = scored.filter(({ isWhole }) => isWhole || !isAnyWhole);
  const best = Math.max(0, ...fitting.map(({ score }) => score));
  return [...new Set(fitting.filter(({ score }) => score === best).flatMap(({ names }) => names))]
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
  if (told === undefined && (header === "" || header.length > LONGEST))
    return { header, at, why: header === "" ? "nothing of ours" : "too long for a header" };
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
  const byColumn = new Map<string, MappedHeader[]>();
  for (const one of mapped) {
    if (one.column === undefined) continue;
    const same = byColumn.get(one.column);
    if (same === undefined) byColumn.set(one.column, [one]);
    else same.push(one);
  }
  const decided = new Map<string, Decision>();
  return mapped.map((one, at) => {
    const { column, over = "" } = one;
    if (column === undefined || one.how === "as told") return one;
    const all = byColumn.get(column) ?? [];
    const key = `${column}:${over}`;
    const decision = decided.get(key) ?? decisionOf(column, all, one.over);
    decided.set(key, decision);
    return at === decision.takes ? one : notTaken(one, decision.why);
  });
}

/** Which one of the headers that may be a column is taken, if any, and why the others are not. */
interface Decision {
  readonly takes: number | undefined;
  readonly why: string;
}

function decisionOf(column: string, all: readonly MappedHeader[], over: MappedHeader["over"]): Decision {
  const told = all.find((one) => one.how === "as told" && (one.over === over || !one.over || !over));
  if (told !== undefined) return { takes: undefined, why: `${column} is "${told.header}", as told` };
  const same = all.filter((one) => one.over === over);
  const ours = same.find(({ how }) => how === "our name");
  const first = ours ?? (same.length === 1 || NAMES_A_ROW.has(column) ? same[0] : undefined);
  if (first !== undefined) return { takes: first.at, why: `${column} is "${first.header}"` };
  const named = same.slice(0, MOST_NAMED).map(({ header }) => `"${header}"`);
  const more = same.length > named.length ? [`${same.length - named.length} more`] : [];
  return { takes: undefined, why: `doubtful: ${[...named, ...more].join(" and ")} may be ${column}` };
}

function notTaken({ header, at, unit }: MappedHeader, why: string): MappedHeader {
  return { header, at, ...(unit === undefined ? {} : { unit }), why };
}
