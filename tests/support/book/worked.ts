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

/** Lays a described book out as the page does and works it out in the embedded engine, in a process of its own. */
export async function workOut(book: BookDescription): Promise<WorkedSheet[]> {
  const hook = path.join(__dirname, "typescript.cjs");
  const { status, stdout, stderr } = await runNode([hook, path.join(__dirname, "child.ts")], {
    input: JSON.stringify(book),
  });
  if (status !== 0) throw new Error(`The book could not be worked out: ${stderr}`);
  return JSON.parse(stdout) as WorkedSheet[];
}
