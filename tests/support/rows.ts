import { readFileSync } from "node:fs";
import path from "node:path";
import { parse } from "csv-parse/sync";

export type Row = Readonly<Record<string, string>>;

/** The rows of a CSV file under tests/data, by its header. */
export function rowsOf(file: string): Row[] {
  return parse(readFileSync(path.join(__dirname, "../data", file)), { columns: true, skip_empty_lines: true });
}

/** One outside check: what a source prints for some inputs. */
export interface PublishedCheck {
  readonly id: string;
  /** For the test's name: how far the value can be trusted, and what it is about. */
  readonly title: string;
  /** The title with source and place in front. */
  readonly cited: string;
  readonly source: string;
  readonly inputs: string;
  readonly expected: number;
  /** Largest difference, in the unit of the expected value. */
  readonly tolerance: number;
}

/** The checks of the published files whose id begins so. */
export function publishedChecks(...prefixes: string[]): PublishedCheck[] {
  const rows = ["published_trade.csv", "published_radiometry.csv", "published_limits.csv"].flatMap(rowsOf);
  const checks = rows.filter((row) => prefixes.some((prefix) => row.id?.startsWith(prefix)));
  return checks.map((row) => {
    const expected = Number(row.expected);
    const tolerance = Number(row.tolerance) * (row.tolerance_kind === "rel" ? Math.abs(expected) : 1);
    const { id = "", evidence, quantity, inputs = "", source = "", locator } = row;
    const title = `${id} [${evidence}] ${quantity}: ${inputs}`;
    return { id, title, cited: `${source}, ${locator}: ${title}`, source, inputs, expected, tolerance };
  });
}

/** The number that stands after a name in the inputs of a check: "load=973 A; rise=102 K". */
export function inputOf(check: PublishedCheck, name: string): number {
  const found = new RegExp(`(?:^|; ?)${name}=(-?[\\d.]+)`).exec(check.inputs);
  if (!found) throw new Error(`${check.id} has no ${name}`);
  return Number(found[1]);
}

/** Fails unless the value lies within the check's tolerance (to rounding) of what the source prints. */
export function expectPublished(check: PublishedCheck, value: number): void {
  expect(Math.abs(value - check.expected)).toBeLessThanOrEqual(check.tolerance + 1e-12);
}
