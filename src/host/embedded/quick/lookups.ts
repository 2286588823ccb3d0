import {
  ErrorType,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  type ArrayValueObject,
} from "@univerjs/engine-formula";
import { arrayOf, cellOf, gridOf, type Calculate, type Value } from "./arrays.js";

/**
 * Ways of our own to look up values exactly and from the top; anything else is left to the engine. As in Excel, and unlike
 * the engine, * and ? are no wildcards there, and what is found is given as it is, an error too.
 */
export const QUICK_LOOKUPS: ReadonlyMap<string, (own: Calculate) => Calculate> = new Map([
  ["XLOOKUP", quickXlookup],
  ["XMATCH", quickXmatch],
]);

/** The engine compares each value with each place: with two thousand rows and assets four million times a column. */
class Index {
  private readonly numbers = new Map<number, number>();
  private readonly texts = new Map<string, number>();

  constructor(places: ArrayValueObject, rows: number) {
    // From the last place to the first, which stays.
    for (let r = rows - 1; r >= 0; r--) {
      const value = cellOf(places, r, 0);
      if (!value || value.isError()) continue;
      if (value.isNumber()) this.numbers.set(value.getValue() as number, r);
      else if (value.isString()) this.texts.set(String(value.getValue()).toLowerCase(), r);
      // An empty cell is as good as an empty text.
      else if (value.isNull()) this.texts.set("", r);
    }
  }

  /** The first place that holds it; -1 for none, undefined for what the engine has to look for itself. */
  placeOf(value: Value): number | undefined {
    // What is empty is looked for as an empty text: the engine finds nothing and forgets what was to stand then.
    if (value.isNull()) return this.texts.get("") ?? -1;
    if (value.isString()) return this.texts.get(String(value.getValue()).toLowerCase()) ?? -1;
    const number = value.isNumber() && value.getPattern() === "" ? (value.getValue() as number) : NaN;
    return Number.isFinite(number) ? (this.numbers.get(number) ?? -1) : undefined;
  }
}

/** Rows of a column; 0 for what is none. A value by itself is one of one row. */
function rowsOf(value: Value | undefined): number {
  if (value === undefined || value.isError()) return 0;
  if (!value.isArray()) return 1;
  const array = value as ArrayValueObject;
  return array.getColumnCount() === 1 ? array.getRowCount() : 0;
}

const columnOf = (value: Value): ArrayValueObject =>
  value.isArray() ? (value as ArrayValueObject) : arrayOf([[value]]);

/** What is given where nothing is found: of a single cell what it holds, which may be nothing. */
function otherwiseOf(ifNone: Value | undefined): Value {
  if (ifNone?.isArray() && rowsOf(ifNone) === 1)
    return cellOf(ifNone as ArrayValueObject, 0, 0) ?? NullValueObject.create();
  return !ifNone || ifNone.isNull() ? ErrorValueObject.create(ErrorType.NA) : ifNone;
}

const isLeftOut = (values: readonly (Value | undefined)[]): boolean => values.every((value) => value === undefined);

function quickXlookup(own: Calculate): Calculate {
  return (...values) => {
    const [sought, places, results, ifNone, ...modes] = values;
    const rows = rowsOf(places);
    const wanted = rowsOf(sought);
    // Of several columns of results a column of values takes the first; a single value takes the row.
    const from = results && columnOf(results);
    const isFit = from?.getRowCount() === rows && (from.getColumnCount() === 1 || wanted > 1);
    const none = otherwiseOf(ifNone);
    if (!wanted || !rows || !isFit || none.isArray() || !isLeftOut(modes)) return own(...values);
    const index = new Index(columnOf(places!), rows);
    return mapped(sought!, (value) => {
      const place = index.placeOf(value);
      if (place === undefined) return own(value, places!, results!, none);
      return place < 0 ? none : (cellOf(from, place, 0) ?? NullValueObject.create());
    });
  };
}

function quickXmatch(own: Calculate): Calculate {
  return (...values) => {
    const [sought, places, ...modes] = values;
    const rows = rowsOf(places);
    if (!rowsOf(sought) || !rows || !isLeftOut(modes)) return own(...values);
    const index = new Index(columnOf(places!), rows);
    return mapped(sought!, (value) => {
      const place = index.placeOf(value);
      if (place === undefined) return own(value, places!);
      return place < 0 ? ErrorValueObject.create(ErrorType.NA) : NumberValueObject.create(place + 1);
    });
  };
}

function mapped(sought: Value, change: (value: Value) => Value): Value {
  if (!sought.isArray()) return change(sought);
  const column = sought as ArrayValueObject;
  return arrayOf(
    gridOf(column.getRowCount(), 1, (r) => {
      const value = cellOf(column, r, 0);
      if (!value) return NullValueObject.create();
      return value.isError() ? value : change(value);
    }),
  );
}
