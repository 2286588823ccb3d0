import {
  ErrorType,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  type ArrayValueObject,
} from "@univerjs/engine-formula";
import { arrayOf, cellOf, gridOf, type Calculate, type Value } from "./arrays.js";

/** Ways of our own to look up a whole column of values exactly and from the top; anything else is left to the engine. */
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
      else if (value.isString()) this.texts.set(String(value.getValue()).toLocaleLowerCase(), r);
      else if (value.isNull()) {
        // An empty cell is as good as 0, and as an empty text.
        this.numbers.set(0, r);
        this.texts.set("", r);
      }
    }
  }

  /** The first place that holds it; -1 for none, undefined for what the engine has to look for itself. */
  placeOf(value: Value): number | undefined {
    if (value.isString()) {
      const text = String(value.getValue());
      return /[*?]/.test(text) ? undefined : (this.texts.get(text.toLocaleLowerCase()) ?? -1);
    }
    const number = value.isNumber() && value.getPattern() === "" ? (value.getValue() as number) : NaN;
    return Number.isFinite(number) ? (this.numbers.get(number) ?? -1) : undefined;
  }
}

/** Rows of a column to look in; 0 for what is none. */
function rowsOf(value: Value | undefined): number {
  if (!value?.isArray()) return 0;
  const array = value as ArrayValueObject;
  return array.getColumnCount() === 1 && array.getRowCount() > 1 ? array.getRowCount() : 0;
}

const isLeftOut = (values: readonly (Value | undefined)[]): boolean => values.every((value) => value === undefined);

function quickXlookup(own: Calculate): Calculate {
  return (...values) => {
    const [sought, places, results, ifNone, ...modes] = values;
    const rows = rowsOf(places);
    if (!rowsOf(sought) || !rows || !results?.isArray() || !isLeftOut(modes)) return own(...values);
    const from = results as ArrayValueObject;
    if (from.getRowCount() !== rows) return own(...values);
    const index = new Index(places as ArrayValueObject, rows);
    const none = !ifNone || ifNone.isNull() ? ErrorValueObject.create(ErrorType.NA) : ifNone;
    return mapped(sought as ArrayValueObject, (value) => {
      const place = index.placeOf(value);
      if (place === undefined) return own(value, places!, results, none);
      const found = place < 0 ? undefined : cellOf(from, place, 0);
      if (place < 0 || found?.isError()) return none;
      return found ?? NullValueObject.create();
    });
  };
}

function quickXmatch(own: Calculate): Calculate {
  return (...values) => {
    const [sought, places, ...modes] = values;
    const rows = rowsOf(places);
    if (!rowsOf(sought) || !rows || !isLeftOut(modes)) return own(...values);
    const index = new Index(places as ArrayValueObject, rows);
    return mapped(sought as ArrayValueObject, (value) => {
      const place = index.placeOf(value);
      if (place === undefined) return own(value, places!);
      return place < 0 ? ErrorValueObject.create(ErrorType.NA) : NumberValueObject.create(place + 1);
    });
  };
}

function mapped(column: ArrayValueObject, change: (value: Value) => Value): ArrayValueObject {
  return arrayOf(
    gridOf(column.getRowCount(), 1, (r) => {
      const value = cellOf(column, r, 0);
      if (!value) return NullValueObject.create();
      return value.isError() ? value : change(value);
    }),
  );
}
