import { ErrorType, ErrorValueObject, type ArrayValueObject } from "@univerjs/engine-formula";
import { cellOf, type Calculate, type Value } from "./quick/arrays.js";

const isSingle = (value: Value): boolean =>
  !value.isArray() ||
  ((value as ArrayValueObject).getRowCount() === 1 && (value as ArrayValueObject).getColumnCount() === 1);

/**
 * FILTER of one row or one column by one truth, which fits its height or its width: the engine wants both to fit, so that
 * a list with a single row in it was #VALUE!.
 */
export function filterSingle(own: Calculate): Calculate {
  return (...values) => {
    const [array, include, ifEmpty] = values;
    if (!array?.isArray() || isSingle(array) || !include || include.isError() || !isSingle(include))
      return own(...values);
    const { rows, columns } = sizeOf(array as ArrayValueObject);
    if (rows !== 1 && columns !== 1) return own(...values);
    const given = include.isArray() ? cellOf(include as ArrayValueObject, 0, 0) : include;
    const truth = given?.isString() ? given.convertToNumberObjectValue() : given;
    if (truth?.isError()) return truth;
    return Number(truth?.getValue() ?? 0) ? array : (ifEmpty ?? ErrorValueObject.create(ErrorType.CALC));
  };
}

const sizeOf = (array: ArrayValueObject) => ({ rows: array.getRowCount(), columns: array.getColumnCount() });
