import path from "node:path";
import type { BookDescription } from "../../../src/templates/contract.js";
import { runNode } from "../run.js";

export type Value = number | string | boolean | null;

/** What a sheet holds after calculation. */
export interface WorkedSheet {
  readonly name: string;
  readonly heading: readonly Value[];
  /** Values of a form's fields by defined name (or label). */
  readonly fields: Readonly<Record<string, Value>>;
  /** Typed and computed columns of a table sheet by key, body rows only. */
  readonly columns: Readonly<Record<string, readonly Value[]>>;
}

/** Lays described books out as the page does and works them out in the embedded engine, in one process of its own. */
export async function workOut(books: readonly BookDescription[]): Promise<WorkedSheet[][]> {
  const script = (name: string): string => path.join(__dirname, name);
  const input = JSON.stringify(books);
  const { status, stdout, stderr } = await runNode([script("typescript.cjs"), script("child.ts")], { input });
  if (status !== 0) throw new Error(`The books could not be worked out: ${stderr}`);
  return JSON.parse(stdout) as WorkedSheet[][];
}
