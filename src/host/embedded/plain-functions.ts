import { ArrayValueObject, BaseFunction, NullValueObject, type BaseValueObject } from "@univerjs/engine-formula";
import type { Cell, Grid } from "../../functions/contract.js";
import { fromGrid, toGrid, toInput } from "./values.js";

/** A range or an array as rows of cells; a value by itself; undefined where it is left out. */
export type PlainArgument = Cell | Grid | undefined;

/** A worksheet function of our own for the engine, in the place of its own one of the name where it has one. */
export interface PlainFunction {
  readonly name: string;
  readonly evaluate: (args: readonly PlainArgument[]) => Cell | Grid;
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

/** An empty cell stays one. */
const value = (cell: Cell): BaseValueObject => (cell === null ? NullValueObject.create() : fromGrid([[cell]]));
