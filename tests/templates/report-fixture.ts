/** Small routes with one reading a row that anybody can reckon: emissivity 1, next to the camera, equal currents. */
import type { BookDescription, FreeSheet } from "../../src/templates/contract.js";
import { routeBook } from "../../src/templates/route/book.js";
import type { FollowUp } from "../../src/templates/report/follow-up-typed.js";
import { clock, day } from "../../src/templates/route/demo/moments.js";
import type { Asset } from "../../src/templates/route/lists.js";
import type { Reading } from "../../src/templates/route/typed.js";
import type { Value, Worked } from "../support/worked.js";

export const SURVEY = day("2026-03-11");

export const surfaces = [{ surface: "black", emissivity: 1 }];

/** At 5 cm the air's own share moves none of these readings by more than 0.05 K. */
export const job = {
  id: "T-1",
  site: "Test",
  date: SURVEY,
  thermographer: "A. Tester",
  range_to: 150,
  reflected: 20,
  path_air: 20,
  distance: 0.05,
} as const;

/** All conditions 1, surveyed a year before, unless said otherwise. */
export function asset(asset_id: string, rest: Asset = {}): Asset {
  return {
    asset_id,
    location: "Room",
    component: `part ${asset_id}`,
    surface: "black",
    expected_max_A: 120,
    criticality: "1",
    physical_condition: "1",
    environment: "1",
    last_survey: day("2025-03-11"),
    ...rest,
  };
}

/** Two phases at 30 °C over air of 20 °C, the right one at what is given: so its rise over similar is 30 less. */
export function row(asset_id: string, right: number | null, rest: Reading = {}): Reading {
  return {
    asset_id,
    status: "exception",
    time: clock("09:00"),
    thermal_image: `IR-${asset_id}`,
    ...(right === null ? {} : { left: 30, middle: 30, right, surrounding_air: 20 }),
    amps_left: 100,
    amps_middle: 100,
    amps_right: 100,
    ...rest,
  };
}

export function book(
  rows: readonly Reading[],
  assets: readonly Asset[],
  followUp: readonly FollowUp[] = [],
): BookDescription {
  return routeBook({ title: "Test", about: [], job, assets, windows: [], surfaces, rows, followUp, units: "C" });
}

export function freeSheet({ sheets }: BookDescription, name: string): FreeSheet {
  const found = sheets.find((sheet): sheet is FreeSheet => sheet.kind === "free" && sheet.name === name);
  if (found === undefined) throw new Error(`no sheet ${name}`);
  return found;
}

/** What a cell of a free sheet holds, by its place in the description. */
export function free(done: Worked, sheet: FreeSheet, row: number, column: number): Value {
  const letters = column < 26 ? "" : String.fromCharCode(64 + Math.floor(column / 26));
  return done.cell(sheet.name, `${letters}${String.fromCharCode(65 + (column % 26))}${sheet.heading.length + 2 + row}`);
}

/** So many cells below the header of this name. */
export function below(done: Worked, sheet: FreeSheet, header: string, count: number, which = 0): Value[] {
  const head = sheet.cells.filter(({ value }) => value === header)[which];
  if (head === undefined) throw new Error(`no header ${header}`);
  return Array.from({ length: count }, (_, i) => free(done, sheet, head.row + 1 + i, head.column));
}
