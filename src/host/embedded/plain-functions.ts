import { ArrayValueObject, BaseFunction, NullValueObject, type BaseValueObject } from "@univerjs/engine-formula";
import type { Cell, Grid } from "../../functions/contract.js";
import { arrayOf, cellOf, gridOf } from "./quick/arrays.js";
import { fromGrid, toCell, toGrid, toInput } from "./values.js";

/** A range or an array as rows of cells; a value by itself; undefined where it is left out. */
export type PlainArgument = Cell | Grid | undefined;

/** A worksheet function of our own for the engine, in the place of its own one of the name where it has one. */
export interface PlainFunction {
  readonly name: string;
  readonly evaluate: (args: readonly PlainArgument[]) => Cell | Grid;
  /** The same for a cell of its one argument, where it is worked out cell by cell. */
  readonly change?: (cell: Cell) => Cell;
  /** Told when it begins; what it gives is asked at the end for what stands in the place of the whole result. */
  readonly begin?: () => () => Cell | undefined;
}

const isGrid = (value: unknown): value is Grid => Array.isArray(value);

/** Plain functions as the engine calls them. */
export function plainExecutors(functions: readonly PlainFunction[]): BaseFunction[] {
  return functions.map((one) => new PlainExecutor(one));
}

class PlainExecutor extends BaseFunction {
  constructor(private readonly plain: PlainFunction) {
    super(plain.name);
  }

  /** Else the engine reads the text "50%" as a number. */
  override isArgumentsIgnoreNumberPattern(): boolean {
    return true;
  }

  override calculate(...values: BaseValueObject[]): BaseValueObject {
    const { change, begin } = this.plain;
    const [only] = values;
    if (change && begin && values.length === 1 && only!.isArray() && (only as ArrayValueObject).getRowCount() > 1) {
      const end = begin();
      const changed = changedArray(only as ArrayValueObject, change);
      const instead = end();
      return instead === undefined ? changed : value(instead);
    }
    const result = this.plain.evaluate(
      values.map((value) => (value.isArray() ? toGrid(value as ArrayValueObject) : (toInput(value) as Cell))),
    );
    if (!isGrid(result)) return value(result);
    if (result.length === 1 && result[0]?.length === 1) return value(result[0][0]!);
    return ArrayValueObject.create({
      calculateValueList: result.map((row) => row.map(value)),
      rowCount: result.length,
      columnCount: result[0]?.length ?? 0,
      unitId: "",
      sheetId: "",
      row: -1,
      column: -1,
    });
  }
}

/** Of a long column most cells stay as they are: those are not made anew. */
function changedArray(array: ArrayValueObject, change: (cell: Cell) => Cell): ArrayValueObject {
  const unchanged = (one: BaseValueObject): boolean =>
    one.isString() || one.isBoolean() || (one.isNumber() && one.getPattern() === "" && Number.isFinite(one.getValue()));
  return arrayOf(
    gridOf(array.getRowCount(), array.getColumnCount(), (r, c) => {
      const one = cellOf(array, r, c);
      const before = one ? toCell(one) : null;
      const after = change(before);
      return one && after === before && unchanged(one) ? one : value(after);
    }),
  );
}

/** An empty cell stays one. */
const value = (cell: Cell): BaseValueObject => (cell === null ? NullValueObject.create() : fromGrid([[cell]]));
