/** A call of one of our functions as a form has it: each argument as typed, the formula to insert, the inputs to preview. */
import type { ArgumentSpec, Cell, FunctionSpec, Grid, Input } from "../functions/contract.js";
import { NAMESPACE } from "../functions/describe.js";

/** What a person typed for one argument. */
export type Argument =
  | { readonly kind: "none" }
  | { readonly kind: "value"; readonly value: Cell }
  /** A cell, a range or a table's column, to be read by the host. */
  | { readonly kind: "reference"; readonly reference: string };

const CELLS = /^(?:(?:'(?:[^']|'')+'|[A-Za-z_][\w.]*)!)?\$?[A-Za-z]{1,3}\$?[1-9]\d*(?::\$?[A-Za-z]{1,3}\$?[1-9]\d*)?$/;
const TABLE_COLUMN = /^[A-Za-z_]\w*\[[^[\]]+\]$/;
const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;

/** Words are text; in quotation marks they are text even where they look like a number or a cell. */
export function readArgument(typed: string): Argument {
  const text = typed.trim();
  if (text === "") return { kind: "none" };
  const quoted = /^"((?:[^"]|"")*)"$/.exec(text)?.[1];
  if (quoted !== undefined) return { kind: "value", value: quoted.replaceAll('""', '"') };
  if (CELLS.test(text) || TABLE_COLUMN.test(text)) return { kind: "reference", reference: text };
  if (/^true$/i.test(text)) return { kind: "value", value: true };
  if (/^false$/i.test(text)) return { kind: "value", value: false };
  return { kind: "value", value: NUMBER.test(text) ? Number(text) : text };
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
  const { value } = argument;
  if (typeof value === "string") return `"${value.replaceAll('"', '""')}"`;
  // A form gives numbers, texts and TRUE or FALSE; JSON writes the rest of them as Excel reads them.
  return typeof value === "boolean" ? String(value).toUpperCase() : JSON.stringify(value);
}

/** Excel hands an empty cell of a range over as 0: where 0 means something, a bare reference would be read as it. */
function mayBeZero({ quantity, zeroIsBlank }: ArgumentSpec): boolean {
  return zeroIsBlank !== true && quantity !== "text" && quantity !== "band" && quantity !== "table";
}
