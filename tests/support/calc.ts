import path from "node:path";
import { root, runNode } from "./run.js";

/** The built command line. */
export const CLI = path.join(root, "dist/cli.js");

/** One line of the answer of `greybody calc`. */
export interface Answer {
  readonly formula: string;
  readonly value?: unknown;
  readonly error?: string;
  readonly message?: string;
}

/** Evaluates formulas by one run of the built command line, one a line on its standard input. */
export async function calc(formulas: readonly string[]): Promise<Answer[]> {
  const { status, stdout, stderr } = await runNode([CLI, "calc"], { input: `${formulas.join("\n")}\n` });
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  return stdout
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line) as Answer);
}
