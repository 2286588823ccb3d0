/** Reads the rows of a client's report into claims; what cannot be read is told, never guessed. */
import type { Claim, Printed } from "../core/audit/verdict/claim.js";
import { EXPONENT } from "../core/loading/load.js";
import { inRange, type Range } from "../core/errors.js";
import { isBareMetal, isOxidised } from "../core/check/surface.js";
import { COLUMN_LIMITS } from "../core/check/limits.js";
import type { Named } from "../core/check/named.js";
import type { Settings } from "../core/correction/settings.js";
import type { Band } from "../core/planck/band.js";
import { DEFAULT_CRITERIA, type REFERENCE_KINDS, type VIEWS } from "../core/severity/criteria.js";
import { AUDIT_COLUMNS, MEASURED_NAMES, STATED_COLUMNS } from "./audit-columns.js";
import type { CheckColumn } from "./check-columns.js";
import { cellText } from "./check-names.js";
import { readNamed } from "./check-read.js";
import { writtenGrade } from "./claims/claim-grade.js";
import { understood } from "./claims/understand.js";
import type { Cell } from "./contract.js";
import { plainNumber } from "./numbers.js";
import { toSI, unitOf, type Units } from "./units.js";

export interface ReadClaim {
  readonly claim: Claim;
  /** What stands in the row and could not be read, in words. */
  readonly unread: readonly string[];
  /** Texts that were read as numbers or choices, and as which. */
  readonly understood: readonly string[];
  /** What the row states and could not be read, so that nobody can say it is reproduced. */
  readonly statedUnread: readonly string[];
  readonly isEmpty: boolean;
}

/** A number computed and not printed has more decimals than any report; its digits say nothing. */
const MOST_DECIMALS = 4;
/** Digits of a number that a formula gave: 57.9 − 45.5 is 12.399999999999999 in binary. */
const SIGNIFICANT = 12;

/** Decimals of a number as it is written; of a number of a sheet the shortest that is it. */
function decimalsOf(cell: Cell): number | undefined {
  const text =
    typeof cell === "number"
      ? String(Number(cell.toPrecision(SIGNIFICANT)))
      : typeof cell === "string"
        ? cell.trim()
        : "";
  if (plainNumber(text) === undefined) return undefined;
  const [, fraction = "", exponent = "0"] = /^[^.e]*(?:\.(\d*))?(?:e([+-]?\d+))?$/i.exec(text) ?? [];
  return Math.max(0, fraction.length - Number(exponent));
}

/**
 * Decimals that each column's numbers are printed to: a sheet shows 58.0 as 58, so its neighbours tell. Of numbers printed
 * alike one in ten ends in 0; where more than half have fewer decimals the column is mixed, and each stands for itself.
 */
export function decimalsByColumn(rows: readonly (readonly Cell[])[], columns: number): (number | undefined)[] {
  return Array.from({ length: columns }, (_, c) => {
    const known = rows.flatMap((row) => {
      const cell = row[c] ?? null;
      const decimals = typeof cell === "number" ? decimalsOf(cell) : undefined;
      return decimals === undefined || decimals > MOST_DECIMALS ? [] : [decimals];
    });
    known.sort((one, other) => other - one);
    return known[Math.ceil(known.length / 2) - 1];
  });
}

const quantityOf = (name: string) => AUDIT_COLUMNS.find((one) => one.name === name)?.quantity;

const HALF_DIGIT_OF: ReadonlySet<string> = new Set([...MEASURED_NAMES, ...STATED_COLUMNS.map(({ name }) => name)]);
const STATED: ReadonlySet<string> = new Set(STATED_COLUMNS.map(({ name }) => name));

/** What a number can be, by its name, in SI. */
export const LIMITS: Readonly<Record<string, Range>> = { ...COLUMN_LIMITS, exponent: EXPONENT };

export interface Reading {
  readonly columns: readonly (CheckColumn | undefined)[];
  readonly decimals: readonly (number | undefined)[];
  readonly units: Units;
  readonly job: Named;
  readonly band: Band;
}

export function readClaim(typed: readonly Cell[], number: number, reading: Reading): ReadClaim {
  const { columns, decimals, units, job, band } = reading;
  const { cells, halves, bound, isBoundStated, told, because } = understood(columns, typed, units);
  const { named, findings, isEmpty } = readNamed(columns, cells, units, number);
  const unread: string[] = findings.map(({ column, values = {} }) => {
    const why = because.get(columns.findIndex((one) => one?.name === column));
    return `${column} "${String(values.typed ?? "")}"${why === undefined ? "" : `: ${why}`}`;
  });
  const text = (name: string): string | undefined => named.text(name) ?? job.text(name);
  const number_ = (name: string): number | undefined => {
    const value = named.raw(name);
    const limits = LIMITS[name];
    if (value === undefined) {
      const ofJob = named.given(name) ? undefined : job.raw(name);
      return ofJob === undefined || (limits && !inRange(ofJob, limits)) ? undefined : ofJob;
    }
    if (limits !== undefined && !inRange(value, limits)) {
      const isPerCent = quantityOf(name) === "fraction" && inRange(value / 100, limits);
      const shown = cellText(cells[columns.findIndex((one) => one?.name === name)]);
      unread.push(`${name} ${shown} cannot be${isPerCent ? ": in per cent?" : ""}`);
      return undefined;
    }
    return value;
  };
  const printed = (name: string): Printed | undefined => {
    const value = number_(name);
    if (value === undefined) return undefined;
    const at = columns.findIndex((one) => one?.name === name);
    const own = halves.get(at);
    return {
      value,
      half: HALF_DIGIT_OF.has(name) ? halfDigit(cells[at] ?? null, decimals[at], name, reading, own) : 0,
    };
  };
  // Where words belong 0 is an empty cell, but the grade 0 is one.
  const isGradeZero = cells[columns.findIndex((one) => one?.name === "stated_grade")] === 0;
  const typedGrade = named.text("stated_grade") ?? (isGradeZero ? "0" : undefined);
  const criteria = job.text("criteria") ?? DEFAULT_CRITERIA;
  const written = typedGrade === undefined ? undefined : writtenGrade(typedGrade, criteria);
  if (typedGrade !== undefined && written === undefined)
    unread.push(
      `stated_grade "${typedGrade}": ${/\d/.test(typedGrade) ? "no whole number from 0 to 4" : "no word of the criteria"}`,
    );
  // A word names one of our grades, so in a report that counts the other way it is the other number.
  const isFlipped = written?.isWord === true && job.text("grades_count") === "1 = worst" && written.grade > 0;
  const grade = written && (isFlipped ? 5 - written.grade : written.grade);
  const understoodTexts =
    written?.isWord === true ? [...told, `stated_grade "${typedGrade ?? ""}" as ${written.grade} of 4`] : told;
  const access = text("access");
  const settings = settingsOf(number_);
  const material = text("material");
  const view = (text("view") ?? "direct") as (typeof VIEWS)[number];
  const claim: Claim = {
    row: number,
    ...given("statedTemp", printed("stated_temp")),
    ...given("statedReferenceTemp", printed("stated_reference_temp")),
    ...given("statedRise", printed("stated_rise")),
    ...given("statedRiseAtLoad", printed("stated_rise_at_load")),
    ...given("statedGrade", grade),
    ...given("apparent", printed("apparent")),
    ...given("referenceApparent", printed("reference_apparent")),
    ...(isBoundStated ? { isStatedAsBound: true } : {}),
    ...given("readingIs", (named.text("reading_is") ?? bound) as Claim["readingIs"]),
    settings,
    ...given("distance", number_("distance")),
    ...given("humidity", number_("humidity")),
    ...given("pressure", number_("pressure")),
    band,
    degrees: units,
    ...given("reference", text("reference") as (typeof REFERENCE_KINDS)[number] | undefined),
    ...given("surroundingAir", printed("surrounding_air")),
    ...given("roomAir", printed("room_air")),
    ...given("load", printed("load")),
    ...given("loadOfReference", printed("load_of_reference")),
    ...given("referenceLoad", printed("reference_load")),
    ...given("ratedLoad", printed("rated_load")),
    ...given("exponent", number_("exponent")),
    minimumLoad: job.number("minimum_load") ?? 0,
    criteria,
    view,
    ...given("material", material),
    isMetal: isBareMetal(material),
    isOxidised: isOxidised(material),
    isOutdoors: access === "outdoor",
    isThroughWindow: access === "window" || named.given("window_temp"),
    ...given("image", named.text("image")),
    ...given("day", named.raw("date")),
    unread: new Set(unread.map((one) => one.split(" ")[0] ?? "")),
  };
  // "n/a" states nothing, what holds a digit does.
  const statedUnread = unread.filter((one) => /^stated_\w+ .*\d/su.test(one));
  return { claim, unread, understood: understoodTexts, statedUnread, isEmpty };
}

function given<Key extends string, Value>(key: Key, value: Value | undefined): Partial<Record<Key, Value>> {
  return value === undefined ? {} : ({ [key]: value } as Record<Key, Value>);
}

function settingsOf(number: (name: string) => number | undefined): Partial<Settings> {
  const air = number("path_air") ?? undefined;
  return {
    ...given("emissivity", number("emissivity")),
    ...given("reflected", number("reflected")),
    ...given("airTransmission", number("air_transmission")),
    ...given("airTemp", air ?? number("surrounding_air")),
    ...given("windowTransmission", number("window_transmission")),
    ...given("windowTemp", number("window_temp")),
    ...given("windowReflectance", number("window_reflectance")),
    ...given("outerReflected", number("outer_reflected")),
  };
}

/** Half of the last digit, in SI. */
function halfDigit(
  cell: Cell,
  ofColumn: number | undefined,
  name: string,
  { units, job }: Reading,
  asWritten?: number,
): number {
  const said = job.raw(STATED.has(name) ? "stated_to" : "inputs_to");
  const quantity = quantityOf(name) ?? "number";
  // A difference has the degree of its temperature, without the offset.
  const unit = { ...unitOf(quantity === "temperature" ? "difference" : quantity, units), shift: 0 };
  const written = asWritten === undefined ? undefined : toSI(asWritten, unit);
  if (said !== undefined && quantity !== "current") return Math.max(said / 2, written ?? 0);
  if (written !== undefined) return written;
  const own = decimalsOf(cell);
  const decimals = Math.max(own ?? 0, typeof cell === "number" ? (ofColumn ?? 0) : 0);
  return decimals > MOST_DECIMALS ? 0 : toSI(0.5 * 10 ** -decimals, unit);
}
