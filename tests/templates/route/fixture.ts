/** Routes worked out in the embedded engine, read by row and column. */
import type { BookDescription } from "../../../src/templates/contract.js";
import { routeBook } from "../../../src/templates/route/book.js";
import { assets } from "../../../src/templates/route/demo/assets.js";
import { job, surfaces, windows } from "../../../src/templates/route/demo/plant.js";
import type { JobValues } from "../../../src/templates/route/job.js";
import type { Asset } from "../../../src/templates/route/lists.js";
import type { Reading } from "../../../src/templates/route/typed.js";
import { type Value, workOut, type WorkedSheet } from "../../support/book/worked.js";

export interface WorkedRoute {
  readonly sheets: readonly WorkedSheet[];
  readonly columns: WorkedSheet["columns"];
  /** A cell of the route, by the row's asset (the first) or its position. */
  readonly cell: (row: string | number, key: string) => Value;
  readonly number: (row: string | number, key: string) => number;
  /** What the row is told, less that its asset stands in another row too, as it may in a test. */
  readonly remarks: (row: string | number) => string;
  /** Error values on any sheet, with their place. */
  readonly errors: readonly string[];
}

/** Several routes in the time of one. */
export async function worked(...books: readonly BookDescription[]): Promise<WorkedRoute[]> {
  return (await workOut(books)).map(readable);
}

function readable(sheets: readonly WorkedSheet[]): WorkedRoute {
  const columns = sheets.find((sheet) => sheet.name === "Route")?.columns ?? {};
  const cell = (row: string | number, key: string): Value => {
    const at = typeof row === "number" ? row : (columns.asset_id ?? []).indexOf(row);
    const column = columns[key];
    if (column === undefined || at < 0 || at >= column.length) throw new Error(`No cell ${row}, ${key}`);
    return column[at] ?? null;
  };
  const number = (row: string | number, key: string): number => {
    const value = cell(row, key);
    if (typeof value !== "number") throw new Error(`${row}, ${key} is no number: ${String(value)}`);
    return value;
  };
  const remarks = (row: string | number): string =>
    String(cell(row, "remarks")).replace(/(^|; )[^;]* stands in a row above as well$/, "");
  return { sheets, columns, cell, number, remarks, errors: errorsOf(sheets) };
}

/** A route with rows of one's own in the plant of the demo; assets given come before its. */
export function inTheDairy(
  rows: readonly Reading[],
  options: { readonly job?: JobValues; readonly assets?: readonly Asset[] } = {},
): BookDescription {
  return routeBook({
    title: "Test",
    about: [],
    job: { ...job, ...options.job },
    assets: [...(options.assets ?? []), ...assets],
    windows,
    surfaces,
    rows,
    units: "C",
  });
}

function errorsOf(sheets: readonly WorkedSheet[]): string[] {
  return sheets.flatMap(({ name, heading, fields, columns }) => {
    const cells: [string, Value][] = [
      ...heading.map((value): [string, Value] => ["heading", value]),
      ...Object.entries(fields),
      ...Object.entries(columns).flatMap(([key, values]) =>
        values.map((value, at): [string, Value] => [`${key} ${at}`, value]),
      ),
    ];
    return cells
      .filter(([, value]) => /^#[A-Z/0]+[!?]?/.test(String(value)))
      .map(([place, value]) => `${name} ${place} ${String(value)}`);
  });
}
