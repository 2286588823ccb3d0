import {
  ArrayValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";

export type Value = BaseValueObject;
/** How a function of the engine is called. */
export type Calculate = (...values: Value[]) => Value;
type Rows = (Value | null)[][];
/** What the engine's own code calls on an array, with the types that it does not tell. */
interface Inner {
  mapValue: (change: (value: Value, row: number, column: number) => Value) => Value;
  _batchOperator: (other: Value, operation: number, operator?: string, isCaseSensitive?: boolean) => Value;
  _createNewArray: (rows: Rows, rowCount: number, columnCount: number) => ArrayValueObject;
}

/** The engine's numbers for its operations, and the method that each is of a single value. */
const METHODS = [
  "minus",
  "plus",
  "multiply",
  "divided",
  "mod",
  "compare",
  "concatenateFront",
  "concatenateBack",
  "pow",
  "round",
  "floor",
  "ceil",
  "atan2",
] as const;
const COMPARE = METHODS.indexOf("compare");
const [MINUS, PLUS, MULTIPLY] = [0, 1, 2];

let isQuick = false;

/**
 * Arrays worked through with as many places as they have. The engine lets each row grow by itself, which reserves
 * seventeen places for the one value of a column's row: most of what a long column took up, and of the time to let it go.
 */
export function workArraysQuickly(): void {
  if (isQuick) return;
  isQuick = true;
  const prototype = ArrayValueObject.prototype as unknown as Inner;
  prototype.mapValue = mapValue;
  prototype._batchOperator = batchOperator;
}

export function arrayOf(rows: Rows): ArrayValueObject {
  return ArrayValueObject.create({
    calculateValueList: rows,
    rowCount: rows.length,
    columnCount: rows[0]?.length ?? 0,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

/** The value of a place; null where there is none. */
export const cellOf = (array: ArrayValueObject, row: number, column: number): Value | null =>
  array.getValueOrDefault(row, column) as Value | null;

/** A row at once: one that grows reserves many places. */
export function gridOf<T>(rows: number, columns: number, cell: (row: number, column: number) => T): T[][] {
  const grid = new Array<T[]>(rows);
  for (let r = 0; r < rows; r++) {
    const line = new Array<T>(columns);
    for (let c = 0; c < columns; c++) line[c] = cell(r, c);
    grid[r] = line;
  }
  return grid;
}

function mapValue(
  this: ArrayValueObject,
  change: (value: Value, row: number, column: number) => Value,
): ArrayValueObject {
  const [rows, columns] = [this.getRowCount(), this.getColumnCount()];
  const values = this.getArrayValue() as (Rows[number] | undefined)[] | undefined;
  const result = gridOf(rows, columns, (r, c) => {
    if (!values?.[r]) return ErrorValueObject.create(ErrorType.VALUE);
    const value = cellOf(this, r, c);
    return value ? change(value, r, c) : NullValueObject.create();
  });
  return (this as unknown as Inner)._createNewArray(result, rows, columns);
}

/** As the engine's: an array with a single value, with one row, or with another array. */
function batchOperator(
  this: ArrayValueObject,
  other: Value,
  operation: number,
  operator?: string,
  isCaseSensitive?: boolean,
): ArrayValueObject {
  const work = workOf(operation, operator, isCaseSensitive);
  const at = (array: ArrayValueObject): ((row: number, column: number) => Value | null) => {
    const [isRow, isColumn] = [array.getRowCount() === 1, array.getColumnCount() === 1];
    return (r, c) => cellOf(array, isRow ? 0 : r, isColumn ? 0 : c);
  };
  const inner = this as unknown as Inner;
  const [ownRows, ownColumns] = [this.getRowCount(), this.getColumnCount()];
  if (!other.isArray()) {
    const rows = gridOf(ownRows, ownColumns, (r, c) => work(cellOf(this, r, c), other));
    return withDefault(inner._createNewArray(rows, ownRows, ownColumns));
  }
  const array = other as ArrayValueObject;
  const [otherRows, otherColumns] = [array.getRowCount(), array.getColumnCount()];
  const [rowCount, columnCount] = [Math.max(ownRows, otherRows), Math.max(ownColumns, otherColumns)];
  if (otherRows === 1 && otherColumns === 1) {
    const single = array.getFirstCell();
    const rows = gridOf(ownRows, ownColumns, (r, c) => work(cellOf(this, r, c), single));
    return withDefault(inner._createNewArray(rows, rowCount, columnCount));
  }
  if (otherRows === 1 && ownColumns > 1) {
    const list = array.getArrayValue()[0] as Rows[number] | undefined;
    const rows = gridOf(ownRows, columnCount, (r, c) =>
      work(cellOf(this, r, c), list?.[c] ?? NullValueObject.create()),
    );
    return withDefault(inner._createNewArray(rows, rowCount, columnCount));
  }
  const [own, its] = [at(this), at(array)];
  const rows = gridOf(rowCount, columnCount, (r, c) => work(own(r, c), its(r, c)));
  return inner._createNewArray(rows, rowCount, columnCount);
}

function withDefault(array: ArrayValueObject): ArrayValueObject {
  array.setDefaultValue(BooleanValueObject.create(false));
  return array;
}

type Work = (one: Value | null, other: Value | null) => Value;

function workOf(operation: number, operator: string | undefined, isCaseSensitive: boolean | undefined): Work {
  const single = singleOf(operation, operator, isCaseSensitive);
  return (one, other) => {
    if (!one || !other) return ErrorValueObject.create(ErrorType.NA);
    if (one.isError()) return one;
    return other.isError() ? other : single(one, other);
  };
}

function singleOf(
  operation: number,
  operator: string | undefined,
  isCaseSensitive: boolean | undefined,
): (one: Value, other: Value) => Value {
  if (operation === COMPARE) {
    if (!operator) return () => ErrorValueObject.create(ErrorType.VALUE);
    const isEqual = operator === "=";
    const isTold = isEqual || operator === "<>";
    return (one, other) => {
      // Nothing is like an empty text but another one, whatever the case.
      if (isTold && one.isString() && other.isString() && other.getValue() === "")
        return BooleanValueObject.create((one.getValue() === "") === isEqual);
      return one.compare(other, operator as never, isCaseSensitive);
    };
  }
  const method = METHODS[operation] as "plus";
  if (operation !== PLUS && operation !== MINUS && operation !== MULTIPLY) return (one, other) => one[method](other);
  return (one, other) => {
    const [a, b] = [numberOf(one), numberOf(other)];
    const result = operation === PLUS ? a + b : operation === MINUS ? a - b : a * b;
    // The engine gives a whole number as it is, and anything else by its decimal digits.
    return Number.isSafeInteger(result) ? NumberValueObject.create(result) : one[method](other);
  };
}

/** What arithmetic takes a value for; NaN where the engine has to look closer. */
function numberOf(value: Value): number {
  if (value.isNumber()) return value.getValue() as number;
  if (value.isBoolean()) return value.getValue() === true ? 1 : 0;
  return value.isNull() ? 0 : NaN;
}
