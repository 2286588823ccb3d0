/** Ties the catalogue to Excel: each function is associated under its own name. */
/// <reference types="custom-functions-runtime" />
import { catalogue } from "../../functions/catalogue.js";
import { isCellError, type Cell, type CellError, type Input } from "../../functions/contract.js";

/** Excel's own codes; it shows a message of ours only with #VALUE! and #N/A. */
const codes: Readonly<Record<CellError["error"], CustomFunctions.ErrorCode>> = {
  "#VALUE!": CustomFunctions.ErrorCode.invalidValue,
  "#N/A": CustomFunctions.ErrorCode.notAvailable,
  "#REF!": CustomFunctions.ErrorCode.invalidReference,
  "#NAME?": CustomFunctions.ErrorCode.invalidName,
  "#NUM!": CustomFunctions.ErrorCode.invalidNumber,
  "#DIV/0!": CustomFunctions.ErrorCode.divisionByZero,
  "#NULL!": CustomFunctions.ErrorCode.nullReference,
  // Excel has no code of these two for a custom function.
  "#SPILL!": CustomFunctions.ErrorCode.invalidValue,
  "#CALC!": CustomFunctions.ErrorCode.invalidValue,
  "#GETTING_DATA": CustomFunctions.ErrorCode.notAvailable,
};

type ExcelCell = number | string | boolean | null | CustomFunctions.Error;

function fromExcel(cell: ExcelCell): Cell {
  if (!(cell instanceof CustomFunctions.Error)) return cell;
  const error = (Object.keys(codes) as CellError["error"][]).find((name) => codes[name] === cell.code) ?? "#VALUE!";
  return { error, message: cell.message ?? "" };
}

function toExcel(cell: Cell): ExcelCell {
  if (isCellError(cell)) return new CustomFunctions.Error(codes[cell.error], cell.message);
  // Null inside a result would show as 0.
  return cell ?? "";
}

/** A left-out argument arrives as null, where a default value of the language would not step in. */
function inputFrom(argument: ExcelCell[][] | null | undefined): Input {
  return argument?.map((row) => row.map(fromExcel));
}

for (const spec of catalogue) {
  CustomFunctions.associate(spec.name, (...args: (ExcelCell[][] | null)[]) =>
    spec.evaluate(args.map(inputFrom)).map((row) => row.map(toExcel)),
  );
}
