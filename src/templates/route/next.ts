/** The next route from the last one: what stays is carried over, what was found stands beside, what is due comes first. */
import type { Cell } from "../../functions/contract.js";
import type { Units } from "../../functions/units.js";
import type { BookDescription, FormSheet, NotesSheet, SheetDescription, TableSheet } from "../contract.js";
import { converted, staysText } from "../refill/cells.js";
import { CARRIED_OVER } from "../refill/refill.js";
import type { RowRecord } from "../refill/records.js";
import type { Template } from "../registry.js";
import { orderOf, type Ordered } from "./next-order.js";
import { dayInWords, lastOf, type LastOfAsset, type LastRoute, numberIn, repairInWords, words } from "./next-last.js";

export interface NextRoute {
  readonly template: Template;
  /** The last route's typed cells, in the units of the new one. */
  readonly carried: BookDescription;
  readonly last: LastRoute;
  readonly from: Units;
  readonly to: Units;
  /** Of the new survey, where it is known. */
  readonly date?: number;
  /** What could not be taken out of the last one. */
  readonly left: readonly string[];
}

/** Fields of Job that belong to the day of a survey. */
const OF_THE_DAY = new Set(
  (
    "id date operating_state check_source check_reading reflected reflected_method reflected_outdoors path_air humidity " +
    "set_reflected set_air_temp set_window_temp permit"
  )
    .split(" ")
    .map((name) => `job_${name}`),
);

export interface MadeRoute {
  readonly book: BookDescription;
  /** What was done and what was not carried over, a sentence each. */
  readonly told: readonly string[];
}

export function nextRoute(given: NextRoute): MadeRoute {
  const { template, carried, last, from, to, date } = given;
  const assets = lastOf(last);
  const ordered = orderOf(assets, last, date);
  const empty = template.empty({ title: carried.title, units: to, rows: Math.max(1, ordered.ids.length) });
  const told: string[] = [lastInWords(carried, last), ...ordered.told];
  const difference = (kelvin: number | undefined): Cell =>
    kelvin === undefined ? null : converted(kelvin, "difference", from, to);
  const sheets = empty.sheets.map((sheet): SheetDescription => {
    const old = carried.sheets.find(({ name, kind }) => name === sheet.name && kind === sheet.kind);
    const { heading } = old ?? sheet;
    if (sheet.kind === "form" && old?.kind === "form") return jobOf(sheet, old, date, told);
    if (sheet.kind !== "table" || old?.kind !== "table") return { ...sheet, heading };
    switch (sheet.tableName) {
      case "Readings":
        return { ...old, rows: rowsOf(old, ordered) };
      case "AssetList":
        return { ...old, rows: assetRows(old, assets, last, difference) };
      case "FollowUp":
        return { ...old, rows: followUpRows(old, assets, last, difference, told) };
      default:
        return old;
    }
  });
  told.push(
    "Readings, currents, image numbers, causes and actions of last time were not carried over: grade, rise, load and repair stand in Assets and, on the route, in the group Last time.",
    ...given.left,
  );
  const notes: NotesSheet = { kind: "notes", name: CARRIED_OVER, heading: [CARRIED_OVER], lines: told };
  return { book: { ...empty, sheets: [...sheets, notes] }, told };
}

function lastInWords(book: BookDescription, { date }: LastRoute): string {
  const job = book.sheets
    .flatMap((sheet) => (sheet.kind === "form" ? sheet.fields : []))
    .find(({ definedName }) => definedName === "job_id");
  const id = words(job?.value);
  const on =
    date === undefined
      ? "without a survey date in Job: last_survey is as it was, and what was due could not be told"
      : `surveyed on ${dayInWords(date)}`;
  return `Made from "${book.title}"${id === "" ? "" : `, job ${id}`}, ${on}.`;
}

function jobOf(empty: FormSheet, old: FormSheet, date: number | undefined, told: string[]): FormSheet {
  const cleared: string[] = [];
  const fields = old.fields.map((field, at) => {
    const { definedName, label, value } = field;
    if (definedName === undefined || !OF_THE_DAY.has(definedName)) return field;
    const start = empty.fields[at]?.value ?? null;
    if (value !== null && value !== undefined && value !== start) cleared.push(label);
    return { ...field, value: definedName === "job_date" && date !== undefined ? date : start };
  });
  if (cleared.length > 0)
    told.push(`Job: these belong to the day and were not carried over: ${cleared.join(", ")}. The rest was: check it.`);
  return { ...old, fields };
}

/** Words of the last workbook as a cell. */
const asText = (said: string): string | null => (said === "" ? null : staysText(said));

/** A row of a table from cells by key; what is not named stays as it is in `before`. */
function rowWith(
  { columns }: TableSheet,
  cells: Readonly<Record<string, Cell>>,
  before: readonly Cell[] = [],
): readonly Cell[] {
  return columns.map(({ key }, at) => (Object.hasOwn(cells, key) ? cells[key]! : (before[at] ?? null)));
}

function rowsOf(readings: TableSheet, { ids }: Ordered): TableSheet["rows"] {
  return (ids.length === 0 ? [null] : ids).map((asset_id) => rowWith(readings, { asset_id }));
}

function assetRows(
  sheet: TableSheet,
  assets: readonly LastOfAsset[],
  last: LastRoute,
  difference: (kelvin: number | undefined) => Cell,
): TableSheet["rows"] {
  const byId = new Map(assets.map((one) => [one.id.toLowerCase(), one]));
  return sheet.rows.map((row, at) => {
    const record = last.assets[at] ?? {};
    const found = byId.get(words(record.asset_id).toLowerCase());
    if (found === undefined) return row;
    const survey = { last_survey: numberIn(record.survey) ?? null };
    const { worst, isInspected } = found;
    // A date that was planned is used up by the survey: the next one is reckoned from it.
    const due: Readonly<Record<string, Cell>> = isInspected ? { next_due: null } : {};
    if (worst === undefined) return rowWith(sheet, { ...survey, ...due }, row);
    const load = numberIn(worst.load_judged) ?? null;
    return rowWith(
      sheet,
      {
        ...survey,
        ...due,
        last_grade: gradeInWords(found, last.date),
        last_rise: difference(numberIn(worst.rise_judged)),
        last_over: asText(words(worst.judged_over)),
        last_amps: load,
        last_load: load,
        repaired: repaired(found, last.followUp),
      },
      row,
    );
  });
}

/** "2 of 4", "no grade", "no exception"; of an asset that was seen in part with its day, since that is no survey of it. */
function gradeInWords({ worst, isInspected }: LastOfAsset, date: number | undefined): string | null {
  const grade = words(worst?.grade_found).split(":")[0] ?? "";
  const said = grade === "" ? words(worst?.status) : grade;
  if (said === "" || isInspected) return asText(said);
  return `${staysText(said)}, seen in part${date === undefined ? "" : ` on ${dayInWords(date)}`}`;
}

function repaired({ grade, followUp, id }: LastOfAsset, all: readonly RowRecord[]): string | null {
  if (grade !== undefined && grade >= 1) return asText(repairInWords(followUp)) ?? "none noted";
  const others = all.filter((one) => words(one.asset_id).toLowerCase() === id.toLowerCase());
  const latest = others.sort((a, b) => (numberIn(b.repair_date) ?? 0) - (numberIn(a.repair_date) ?? 0))[0];
  return asText(repairInWords(latest));
}

/** What is open stays, what was graded last time and is not in it yet is added. */
function followUpRows(
  sheet: TableSheet,
  assets: readonly LastOfAsset[],
  { followUp, date }: LastRoute,
  difference: (kelvin: number | undefined) => Cell,
  told: string[],
): TableSheet["rows"] {
  const isClosed = (at: number): boolean => words(followUp[at]?.closed_on) !== "";
  const filled = sheet.rows.map((row, at) => ({ row, at })).filter(({ row }) => row.some((cell) => cell !== null));
  const open = filled.filter(({ at }) => !isClosed(at)).map(({ row }) => row);
  const fresh = assets.filter(({ grade, followUp: known }) => grade !== undefined && grade >= 1 && known === undefined);
  const added = fresh.map(({ cell, worst }) =>
    rowWith(sheet, {
      asset_id: cell,
      found_on: date ?? null,
      grade_found: asText(words(worst?.grade_found)),
      rise_found: difference(numberIn(worst?.rise_judged)),
      u_found: difference(numberIn(worst?.rise_U)),
      over: asText(words(worst?.judged_over)),
      load_found: numberIn(worst?.load_judged) ?? null,
    }),
  );
  const closed = filled.length - open.length;
  told.push(
    `Follow-up: ${open.length} open from before, ${added.length} added from the exceptions of last time; ${closed} closed stay in the last workbook.`,
  );
  return [...open, ...added];
}
