/** A call of one of our functions as a form has it: each argument as typed, the formula to insert, the inputs to preview. */
import type { ArgumentSpec, Cell, FunctionSpec, Grid, Input } from "../functions/contract.js";
import { NAMESPACE } from "../functions/describe.js";
import { plainValue, readArray, writeArray, writeCell } from "./array.js";

/** What a person typed for one argument. */
export type Argument =
  | { readonly kind: "none" }
  | { readonly kind: "value"; readonly value: Cell }
  /** Several values, as a formula writes them: {58,0.85;60,0.9}. */
  | { readonly kind: "array"; readonly grid: Grid }
  /** A cell, a range or a table's column, to be read by the host. */
  | { readonly kind: "reference"; readonly reference: string };

const CELLS = /^(?:(?:'(?:[^']|'')+'|[A-Za-z_][\w.]*)!)?\$?[A-Za-z]{1,3}\$?[1-9]\d*(?::\$?[A-Za-z]{1,3}\$?[1-9]\d*)?$/;
const TABLE_COLUMN = /^[A-Za-z_]\w*\[[^[\]]+\]$/;

/** Words are text; in quotation marks they are text even where they look like a number or a cell. */
export function readArgument(typed: string): Argument {
  const text = typed.trim();
  if (text === "") return { kind: "none" };
  const quoted = /^"((?:[^"]|"")*)"$/.exec(text)?.[1];
  if (quoted !== undefined) return { kind: "value", value: quoted.replaceAll('""', '"') };
  if (CELLS.test(text) || TABLE_COLUMN.test(text)) return { kind: "reference", reference: text };
  const grid = readArray(text);
  if (grid !== undefined) return { kind: "array", grid };
  return { kind: "value", value: plainValue(text) ?? text };
}

/** "=GREY.NAME(…)", with what is left out at the end left out. */
export function callFormula(spec: FunctionSpec, given: readonly Argument[]): string {
  const written = spec.args.map((argument, index) => writeArgument(argument, given[index] ?? { kind: "none" }));
  while (written.at(-1) === "") written.pop();
  return `=${NAMESPACE}.${spec.name}(${written.join(",")})`;
}

/**
 * What the call would give, each error with its message. Pure: a reference stands for the cells given for it in
 * `cells`, by the reference as typed.
 */
export function previewCall(spec: FunctionSpec, given: readonly Argument[], cells: ReadonlyMap<string, Grid>): Grid {
  const inputs = spec.args.map((_, index): Input => {
    const argument = given[index];
    if (argument === undefined || argument.kind === "none") return undefined;
    if (argument.kind === "value") return argument.value;
    if (argument.kind === "array") return argument.grid;
    return (
      cells.get(argument.reference) ?? { error: "#REF!", message: `There is nothing to read at ${argument.reference}.` }
    );
  });
  return spec.evaluate(inputs);
}

function writeArgument(spec: ArgumentSpec, argument: Argument): string {
  if (argument.kind === "none") return "";
  if (argument.kind === "reference")
    return mayBeZero(spec) ? `IF(${argument.reference}="","",${argument.reference})` : argument.reference;
  return argument.kind === "array" ? writeArray(argument.grid) : writeCell(argument.value);
}

/** Excel hands an empty cell of a range over as 0: where 0 means something, a bare reference would be read as it. */
function mayBeZero({ quantity, zeroIsBlank, columns }: ArgumentSpec): boolean {
  if (columns !== undefined) return columns.some(mayBeZero);
  return zeroIsBlank !== true && quantity !== "text" && quantity !== "band" && quantity !== "table";
}
