import { BooleanValueObject, CELL_INVERTED_INDEX_CACHE } from "@univerjs/engine-formula";

/**
 * Lets every cell of a range be compared by its own value. The engine's index of a column, which it asks from the second
 * comparison on, keeps 0 and empty under one roof, and the text 5 with the number: A1:A9="" was true where a 0 stood
 * (a phase without current, a reading of 0 °C), and ""<1 was true of a range. What nobody asks is not kept either: with
 * every operation an entry was made for each cell, and to store a result the engine looked its old entry up through
 * every value of the column, n² steps for a spill of n rows.
 */
export function compareByValue(): void {
  const cache = CELL_INVERTED_INDEX_CACHE;
  cache.canUseCache = () => ({ rowsInCache: [], rowsNotInCache: [] });
  cache.set = () => undefined;
  cache.setContinueBuildingCache = () => undefined;
}

let differs = false;

/** A truth is no text: TRUE<>"" is TRUE, where the engine gave FALSE as it did for TRUE="". */
export function compareTruths(): void {
  if (differs) return;
  differs = true;
  const prototype = BooleanValueObject.prototype;
  // eslint-disable-next-line @typescript-eslint/unbound-method -- called with its own value below
  const { compare } = prototype;
  prototype.compare = function (other, operator) {
    if (other.isString() && String(operator) === "<>") return BooleanValueObject.create(true);
    return compare.call(this, other, operator);
  };
}
