import { fstatSync } from "node:fs";
import type { Readable } from "node:stream";
import { isCellError, type Cell, type FunctionSpec, type Grid } from "../functions/contract.js";
import { HeadlessEngine } from "../host/embedded/headless.js";
import { linesOf } from "./lines.js";
import { Output } from "./output.js";
import { UsageError } from "./usage.js";

/**
 * `greybody calc`: evaluates each formula for itself and writes one JSON object a line, in the order of the formulas.
 * Without formulas they are read from standard input, one a line; a blank line is answered like any other, so that
 * line n of the output always belongs to line n of the input.
 */
export async function calc(formulas: readonly string[], specs: readonly FunctionSpec[]): Promise<void> {
  const engine = new HeadlessEngine(specs);
  const output = new Output();
  const batches = formulas.length > 0 ? [formulas] : linesOf(standardInput());
  for await (const batch of batches) {
    for (const formula of batch) await output.line(await answer(engine, formula));
    await output.flush();
  }
}

function standardInput(): Readable {
  // Node would read a folder as if it were empty.
  if (fstatSync(0).isDirectory()) throw new UsageError("standard input is a folder, not a list of formulas.");
  return process.stdin;
}

async function answer(engine: HeadlessEngine, formula: string): Promise<string> {
  const result = await engine.evaluate(formula);
  return JSON.stringify({ formula, ...("error" in result ? result : value(result)) });
}

function value(grid: Grid): object {
  const single = grid.length === 1 && grid[0]!.length === 1 ? grid[0]![0]! : undefined;
  if (single !== undefined && isCellError(single)) return errorOf(single);
  return { value: single ?? grid };
}

function errorOf({ error, message }: Exclude<Cell, string | number | boolean | null>): object {
  return { error, message };
}
