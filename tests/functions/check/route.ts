/** Routes to check, made of a row with nothing against it and what is changed in it. */
import { CHECK } from "../../../src/functions/check.js";
import type { Cell, Grid } from "../../../src/functions/contract.js";

export type Line = Readonly<Record<string, Cell>>;

/** An exception with nothing against it; invented. */
export const CALM: Line = {
  asset_id: "MSB-Q3",
  status: "exception",
  thermal_image: "IR-0101",
  time: 0.37,
  left: 38,
  middle: 37.8,
  right: 60,
  amps_left: 231,
  amps_middle: 226,
  amps_right: 229,
  surrounding_air: 26.5,
  emissivity: 0.95,
  reflected: 26,
  distance: 1,
  humidity: 45,
  expected_max_A: 290,
};

/** One as the findings table has it. */
export interface Found {
  readonly row: number;
  readonly column: string;
  readonly kind: string;
  readonly what: string;
  readonly why: string;
  readonly todo: string;
}

export interface Checked {
  readonly texts: readonly string[];
  readonly findings: readonly Found[];
}

/** Runs CHECK both ways over rows that need not have the same columns. */
export function check(rows: readonly Line[], job?: Line, units?: string): Checked {
  const headers = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const grid = rows.map((row) => headers.map((name) => row[name] ?? null));
  const jobGrid = job && Object.entries(job).map(([name, value]): Cell[] => [name, value]);
  const ask = (show: string): Grid => CHECK.evaluate([[headers], grid, jobGrid, show, units]);
  const [head, ...table] = ask("findings");
  expect(head).toEqual(["row", "column", "kind", "what", "why", "what to do"]);
  return {
    texts: ask("text").map(([cell]) => cell as string),
    findings: table.map(([row, column, kind, what, why, todo]) => ({ row, column, kind, what, why, todo }) as Found),
  };
}

/** Findings of the first row with these changes to the calm one: "kind column: what". */
export function against(changes: Line, job?: Line, units?: string): string[] {
  const { findings } = check([{ ...CALM, ...changes }], job, units);
  return findings.map(({ kind, column, what }) => `${kind} ${column}: ${what}`);
}
