import type { BaseFunction, IFunctionNames } from "@univerjs/engine-formula";
import { NAMESPACE } from "../../functions/describe.js";
import { plainName } from "./names.js";
import { nearest } from "../../core/nearest.js";
import type { FormulaReading } from "./syntax.js";

type Functions = ReadonlyMap<IFunctionNames, BaseFunction>;

/** Read by the engine itself, not through a function. */
const BUILT_IN = new Set(["LET", "LAMBDA"]);

/**
 * Why a formula gives an error that brings no message of its own, where its form tells it: an unknown function or
 * name, or a wrong number of arguments.
 */
export function explainError(error: string, reading: FormulaReading, functions: Functions): string | undefined {
  if (error === "#NAME?") return unknownFunction(reading, functions) ?? unknownName(reading);
  return wrongCount(reading, functions);
}

/** The sentence for the first function that is not known. */
function unknownFunction(reading: FormulaReading, functions: Functions): string | undefined {
  const call = reading.calls
    .map(({ name }) => plainName(name, true))
    .find((name) => !isKnown(name.toUpperCase(), functions));
  if (call === undefined) return undefined;
  if (reading.bound.has(call.toLowerCase()))
    return `${call} is a LAMBDA with a name of LET: the engine cannot call it by that name.`;
  if (call.toUpperCase() === "IMAGE") return "IMAGE fetches a picture from elsewhere and is not known here.";
  const near = suggestions(call, functions);
  return `There is no function ${call} here.${near.length === 0 ? "" : ` Did you mean ${near.join(" or ")}?`}`;
}

function isKnown(name: string, functions: Functions): boolean {
  return BUILT_IN.has(name) || functions.has(name);
}

/** Ours first, also where the namespace was forgotten. */
function suggestions(name: string, functions: Functions): string[] {
  const all = [...functions.keys()].map(String);
  const ours = all.filter((known) => known.startsWith(`${NAMESPACE}.`));
  const bare = name.slice(name.lastIndexOf(".") + 1);
  const near = nearest(
    bare,
    ours.map((known) => known.slice(NAMESPACE.length + 1)),
  ).map((known) => `${NAMESPACE}.${known}`);
  return near.length > 0
    ? near
    : nearest(
        name,
        all.filter((known) => !ours.includes(known)),
      );
}

function unknownName(reading: FormulaReading): string | undefined {
  const name = reading.names[0];
  return name === undefined
    ? undefined
    : `There is no name ${name} here: if it is meant as text, put it in double quotes.`;
}

function wrongCount(reading: FormulaReading, functions: Functions): string | undefined {
  for (const { name, args } of reading.calls) {
    const known = functions.get(plainName(name, true).toUpperCase());
    if (known === undefined || known.minParams < 0 || known.maxParams < 0) continue;
    const { minParams, maxParams } = known;
    if (args >= minParams && args <= maxParams) continue;
    const range = minParams === maxParams ? `${minParams}` : `${minParams} to ${maxParams}`;
    return `${name.toUpperCase()} takes ${range} argument${maxParams === 1 ? "" : "s"}, ${args} ${args === 1 ? "was" : "were"} given.`;
  }
  return undefined;
}
