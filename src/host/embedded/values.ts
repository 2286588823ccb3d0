import {
  ArrayValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";
import { isCellError, type Cell, type CellError, type Grid, type Input } from "../../functions/contract.js";
import { plainMessage } from "../plain-messages.js";

/** The message that stands for the error of a cell (0-based row and column), where one is known. */
export type MessageAt = (unit: string, sheet: string, row: number, column: number) => string | undefined;

/** The engine's own errors that a worksheet does not know. */
const OWN_ERRORS: ReadonlyMap<string, CellError["error"]> = new Map([
  [ErrorType.CYCLE, "#REF!"],
  [ErrorType.ERROR, "#VALUE!"],
]);

/**
 * One argument from the engine. A left-out one, f(1,,2), is undefined; an empty cell of a reference is null;
 * a single cell is its value, because the engine hands A1 over as 1 × 1.
 */
export function toInput(value: BaseValueObject, messageAt?: MessageAt): Input {
  if (value.isNull()) return undefined;
  if (!value.isArray()) return toCell(value);
  const grid = toGrid(value as ArrayValueObject, messageAt);
  return grid.length === 1 && grid[0]!.length === 1 ? grid[0]![0]! : grid;
}

/** The cells of an array; errors keep their message, those of referenced cells are looked up. */
export function toGrid(array: ArrayValueObject, messageAt?: MessageAt): Grid {
  const rows = array.getRowCount();
  const columns = array.getColumnCount();
  if (rows === 0 || columns === 0) return [[refError]];
  const values = array.getArrayValue();
  const grid = new Array<Cell[]>(rows);
  for (let r = 0; r < rows; r++) {
    const from = values[r];
    const to = new Array<Cell>(columns);
    for (let c = 0; c < columns; c++) {
      const value = from?.[c] ?? array.get(r, c);
      if (!value) to[c] = null;
      else if (value.isNumber()) to[c] = value.getValue();
      else
        to[c] = toCell(value, () =>
          messageAt?.(array.getUnitId(), array.getSheetId(), array.getCurrentRow() + r, array.getCurrentColumn() + c),
        );
    }
    grid[r] = to;
  }
  return grid;
}

const refError: CellError = { error: "#REF!", message: plainMessage("#REF!") };

/** A single value. */
export function toCell(value: BaseValueObject, message?: () => string | undefined): Cell {
  if (value.isError()) return toCellError(value as ErrorValueObject, message);
  if (value.isNull()) return null;
  if (value.isLambda())
    return {
      error: "#CALC!",
      message: "A LAMBDA stands here that nothing calls: give it its arguments in parentheses.",
    };
  return value.getValue();
}

/** An error with our message if it has one, else with that of its cell, else with a plain sentence. */
function toCellError(value: ErrorValueObject, message?: () => string | undefined): CellError {
  const type = value.getErrorType();
  const error = OWN_ERRORS.get(type) ?? (type as CellError["error"]);
  return { error, message: (value.getErrorContent() || message?.()) ?? plainMessage(type) };
}

/** What a function gave, for the engine: 1 × 1 as a single value, anything larger spills. */
export function fromGrid(grid: Grid): BaseValueObject {
  const columns = grid[0]?.length ?? 0;
  if (columns === 0) return fromCell("");
  if (grid.length === 1 && columns === 1) return fromCell(grid[0]![0]!);
  return ArrayValueObject.create({
    calculateValueList: grid.map((row) => row.map(fromCell)),
    rowCount: grid.length,
    columnCount: columns,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

/** An empty cell is handed on as the empty text: the engine would show it as 0. */
function fromCell(cell: Cell): BaseValueObject {
  if (typeof cell === "number")
    return Number.isFinite(cell) ? NumberValueObject.create(cell) : errorValue("#NUM!", plainMessage("#NUM!"));
  if (typeof cell === "string") return StringValueObject.create(cell);
  if (typeof cell === "boolean") return BooleanValueObject.create(cell);
  return isCellError(cell) ? errorValue(cell.error, cell.message) : StringValueObject.create("");
}

/** Never from the engine's cache of errors: beyond 64 characters that takes two messages of one hash for the same. */
export function errorValue(error: CellError["error"], message: string): ErrorValueObject {
  return new ErrorValueObject(error as ErrorType, message);
}
