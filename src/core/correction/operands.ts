import { CHUNK } from "../planck/table.js";
import type { BandTable } from "../planck/table.js";

/** One value for all rows, or one a row; NaN is "not given" in a temperature that may be absent, else a value that cannot be. */
export type Column = number | Float64Array;

/** A column as the loops read it: row `at + i` of the block is values[start(at) + i]; constants repeat in an array of their own. */
export class Operand {
  readonly values: Float64Array;
  private readonly perRow: boolean;

  constructor(column: Column) {
    this.perRow = typeof column !== "number";
    this.values = typeof column === "number" ? new Float64Array(CHUNK).fill(column) : column;
  }

  start(at: number): number {
    return this.perRow ? at : 0;
  }
}

/** A temperature column and the radiances of the run at hand. */
export class RadianceOperand extends Operand {
  private readonly constant: boolean;

  constructor(
    column: Column,
    private readonly table: BandTable,
    /** Where the radiances go: an array of the module that reads them, which the engine then knows at compile time. */
    private readonly radiances: Float64Array,
  ) {
    super(column);
    this.constant = typeof column === "number";
    if (this.constant) table.radianceInto(this.values, 0, radiances, CHUNK, 1, 0);
  }

  /** Fills the radiances of `count` rows from `at`. */
  load(at: number, count: number): void {
    if (!this.constant) this.table.radianceInto(this.values, at, this.radiances, count, 1, 0);
  }
}
