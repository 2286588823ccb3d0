/** Ties the catalogue to Excel: each function is associated under its own name. */
/// <reference types="custom-functions-runtime" />
import { catalogue } from "../../functions/catalogue.js";
import type { FunctionSpec } from "../../functions/contract.js";
import { blankErrors } from "./build.js";
import { keptMessages } from "./messages.js";
import { fromExcel, toExcel, type ExcelCell } from "./values.js";

// Where Office's script did not come the page still shows the functions and the cautions.
if ("CustomFunctions" in globalThis) {
  for (const spec of catalogue) CustomFunctions.associate(spec.name, (...given: unknown[]) => call(spec, given));
}

/** Excel appends who calls, after as many arguments as it has. */
function call(spec: FunctionSpec, given: unknown[]): ExcelCell[][] {
  const invocation = invocationOf(given.at(-1));
  const inputs = spec.args.map((_, index) => (given[index] === invocation ? undefined : fromExcel(given[index])));
  const result = spec.evaluate(inputs);
  // A preview is of what is being typed, not of what stands in the cell.
  if (invocation?.address !== undefined && !invocation.isInValuePreview)
    keptMessages.keep(invocation.address, spec.name, result);
  return toExcel(result, blankErrors);
}

function invocationOf(last: unknown): CustomFunctions.Invocation | undefined {
  return typeof last === "object" && last !== null && !Array.isArray(last) ? last : undefined;
}
