/** Values between Excel's runtime and the catalogue: what a custom function is handed, and what it hands back. */
import { isCellError, type Cell, type CellError, type Grid, type Input } from "../../functions/contract.js";

/** CustomFunctions.Error as it is when it runs: its own types do not say that it can be thrown. */
type ExcelError = Error & { readonly code: string };
type ExcelErrorClass = new (code: string, message: string) => ExcelError;
export type ExcelCell = number | string | boolean | ExcelError;
type ErrorName = CellError["error"];

/**
 * What Excel takes back for each error. #REF! and #NAME? come in but may not go out, and of the others that a custom
 * function cannot give #VALUE! is the nearest; a message of ours shows with #VALUE! and #N/A only.
 */
const outgoing: Readonly<Record<ErrorName, string>> = {
  "#VALUE!": "#VALUE!",
  "#N/A": "#N/A",
  "#NUM!": "#NUM!",
  "#DIV/0!": "#DIV/0!",
  "#NULL!": "#NULL!",
  "#REF!": "#VALUE!",
  "#NAME?": "#VALUE!",
  "#SPILL!": "#VALUE!",
  "#CALC!": "#VALUE!",
  "#GETTING_DATA": "#N/A",
};

/** The argument as Excel hands it over: a matrix always, or null where it is left out. */
export function fromExcel(argument: unknown): Input {
  if (argument === null || argument === undefined) return undefined;
  if (!Array.isArray(argument)) return cellFromExcel(argument);
  return argument.map((row: unknown) => (Array.isArray(row) ? row.map(cellFromExcel) : [cellFromExcel(row)]));
}

function cellFromExcel(cell: unknown): Cell {
  if (cell === null || cell === undefined) return null;
  if (typeof cell === "number" || typeof cell === "string" || typeof cell === "boolean") return cell;
  return errorFromExcel(cell);
}

/** By its form, not by its class, which Excel loads late. */
function errorFromExcel(cell: { code?: unknown; message?: unknown }): CellError {
  const error = (Object.keys(outgoing) as ErrorName[]).find((name) => name === cell.code);
  if (error === undefined)
    return { error: "#VALUE!", message: "A cell holds something that is neither number, text, TRUE nor FALSE." };
  return { error, message: typeof cell.message === "string" ? cell.message : "" };
}

/**
 * A result as Excel takes it. An error that is the whole result is thrown, as the documentation has it; within a spill
 * it stands in its cell.
 * @param blankErrors an empty text for each error, for an Excel in which one error spoils a whole spill
 * @throws CustomFunctions.Error
 */
export function toExcel(result: Grid, blankErrors: boolean): ExcelCell[][] {
  const errorClass = blankErrors ? undefined : loadedErrorClass();
  const single = result.length === 1 && result[0]?.length === 1 ? result[0][0] : undefined;
  if (errorClass !== undefined && isCellError(single)) throw excelError(errorClass, single);
  return result.map((row) => row.map((cell) => cellToExcel(cell, errorClass, blankErrors)));
}

function cellToExcel(cell: Cell, errorClass: ExcelErrorClass | undefined, blankErrors: boolean): ExcelCell {
  // Null inside a result would show as 0.
  if (!isCellError(cell)) return cell ?? "";
  if (blankErrors) return "";
  // Without the class the name as text: no number comes of it either.
  return errorClass === undefined ? outgoing[cell.error] : excelError(errorClass, cell);
}

function excelError(errorClass: ExcelErrorClass, { error, message }: CellError): ExcelError {
  return new errorClass(outgoing[error], message);
}

/** CustomFunctionsRuntime 1.2; not there in a plain browser, nor before Excel's own script has come. */
function loadedErrorClass(): ExcelErrorClass | undefined {
  const runtime = (globalThis as unknown as { CustomFunctions?: { Error?: ExcelErrorClass } }).CustomFunctions;
  return runtime?.Error;
}
