/** The cells of a sheet in little memory: some millions of constants beside the formulas that are worked out. */
import type { CellSink, FileCell, SavedValue } from "../sheet/cells.js";

const enum Kind {
  Nothing,
  Number,
  Text,
  Boolean,
  Error,
  /** Kept as it was met: formulas, and what has more to it than a value. */
  Whole,
}

const COLUMNS = 16_384;

/** A sheet's cells by their key, row × 16,384 + column. */
export interface SheetCells {
  readonly size: number;
  readonly get: (key: number) => FileCell | undefined;
  readonly valueAt: (key: number) => SavedValue;
  /** Cells of a row from left to right. */
  readonly inRow: (row: number) => FileCell[];
}

export class CellStore implements SheetCells, CellSink {
  /** In the order of the part. */
  readonly formulaCells: FileCell[] = [];
  /** One more than the last row and column with a cell. */
  rows = 0;
  columns = 0;
  size = 0;
  private isSorted = true;
  private rowOf = new Int32Array(1024);
  private columnOf = new Uint16Array(1024);
  private starts = new Int32Array(1024);
  private ends = new Int32Array(1024);
  private kinds = new Uint8Array(1024);
  private types = new Uint8Array(1024);
  private data = new Float64Array(1024);
  private readonly texts: string[] = [];
  private readonly whole: FileCell[] = [];
  private readonly typeNames: (string | undefined)[] = [];
  /** Place of the first cell of each row. */
  private rowStarts = new Int32Array(0);

  /** @param changed what a cell counts as; called once for each */
  constructor(private readonly changed: (cell: FileCell) => FileCell) {}

  readonly reset = (): void => {
    this.size = this.rows = this.columns = 0;
    this.isSorted = true;
    for (const list of [this.formulaCells, this.texts, this.whole]) list.length = 0;
  };

  readonly cell = (met: FileCell): void => {
    const cell = this.changed(met);
    const { row, column, value, type, formula } = cell;
    const i = this.size++;
    if (i === this.rowOf.length) this.grow();
    if (i > 0 && row * COLUMNS + column <= this.rowOf[i - 1]! * COLUMNS + this.columnOf[i - 1]!) this.isSorted = false;
    this.rows = Math.max(this.rows, row + 1);
    this.columns = Math.max(this.columns, column + 1);
    this.rowOf[i] = row;
    this.columnOf[i] = column;
    this.starts[i] = cell.start;
    this.ends[i] = cell.end;
    if (formula) this.formulaCells.push(cell);
    if (formula !== undefined || cell.cellMetadata !== 0 || cell.valueMetadata !== 0) {
      this.kinds[i] = Kind.Whole;
      this.data[i] = this.whole.push(cell) - 1;
      return;
    }
    let named = this.typeNames.indexOf(type);
    if (named < 0) named = this.typeNames.push(type) - 1;
    this.types[i] = named;
    this.put(i, value);
  };

  private put(i: number, value: SavedValue): void {
    if (value === null) this.kinds[i] = Kind.Nothing;
    else if (typeof value === "number") {
      this.kinds[i] = Kind.Number;
      this.data[i] = value;
    } else if (typeof value === "boolean") {
      this.kinds[i] = Kind.Boolean;
      this.data[i] = Number(value);
    } else {
      this.kinds[i] = typeof value === "string" ? Kind.Text : Kind.Error;
      this.data[i] = this.texts.push(typeof value === "string" ? value : value.error) - 1;
    }
  }

  /** Once all cells are there. Of two in one place the later counts. */
  finish(): this {
    if (!this.isSorted) this.sort();
    this.rowStarts = new Int32Array(this.rows + 1);
    let row = 0;
    for (let i = 0; i < this.size; i++) while (row <= this.rowOf[i]!) this.rowStarts[row++] = i;
    while (row <= this.rows) this.rowStarts[row++] = this.size;
    return this;
  }

  readonly get = (key: number): FileCell | undefined => {
    const i = this.find(key);
    return i < 0 ? undefined : this.cellAt(i);
  };

  readonly valueAt = (key: number): SavedValue => {
    const i = this.find(key);
    return i < 0 ? null : this.saved(i);
  };

  readonly inRow = (row: number): FileCell[] => {
    const [from, to] = [this.rowStarts[row] ?? 0, this.rowStarts[row + 1] ?? 0];
    return Array.from({ length: Math.max(0, to - from) }, (_, i) => this.cellAt(from + i));
  };

  private saved(i: number): SavedValue {
    const data = this.data[i]!;
    switch (this.kinds[i]! as Kind) {
      case Kind.Nothing:
        return null;
      case Kind.Number:
        return data;
      case Kind.Boolean:
        return data === 1;
      case Kind.Text:
        return this.texts[data]!;
      case Kind.Error:
        return { error: this.texts[data]! };
      case Kind.Whole:
        return this.whole[data]!.value;
    }
  }

  private cellAt(i: number): FileCell {
    if (this.kinds[i] === Kind.Whole) return this.whole[this.data[i]!]!;
    return {
      row: this.rowOf[i]!,
      column: this.columnOf[i]!,
      value: this.saved(i),
      type: this.typeNames[this.types[i]!],
      formula: undefined,
      cellMetadata: 0,
      valueMetadata: 0,
      start: this.starts[i]!,
      end: this.ends[i]!,
    };
  }

  /** The last place with a key, or -1. */
  private find(key: number): number {
    const row = Math.floor(key / COLUMNS);
    const column = key - row * COLUMNS;
    if (row >= this.rows) return -1;
    let [low, high] = [this.rowStarts[row]!, this.rowStarts[row + 1]!];
    const first = low;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.columnOf[middle]! <= column) low = middle + 1;
      else high = middle;
    }
    return low > first && this.columnOf[low - 1] === column ? low - 1 : -1;
  }

  private grow(): void {
    const length = this.rowOf.length * 2;
    const longer = <A extends { set: (from: A) => void }>(make: new (length: number) => A, from: A): A => {
      const to = new make(length);
      to.set(from);
      return to;
    };
    this.rowOf = longer(Int32Array, this.rowOf);
    this.columnOf = longer(Uint16Array, this.columnOf);
    this.starts = longer(Int32Array, this.starts);
    this.ends = longer(Int32Array, this.ends);
    this.kinds = longer(Uint8Array, this.kinds);
    this.types = longer(Uint8Array, this.types);
    this.data = longer(Float64Array, this.data);
  }

  /** Cells may stand in any order in a part that no program wrote; equal places keep theirs. */
  private sort(): void {
    const { rowOf, columnOf, starts, ends, kinds, types, data } = this;
    const order = Uint32Array.from({ length: this.size }, (_, i) => i).sort(
      (a, b) => rowOf[a]! - rowOf[b]! || columnOf[a]! - columnOf[b]! || a - b,
    );
    this.rowOf = Int32Array.from(order, (i) => rowOf[i]!);
    this.columnOf = Uint16Array.from(order, (i) => columnOf[i]!);
    this.starts = Int32Array.from(order, (i) => starts[i]!);
    this.ends = Int32Array.from(order, (i) => ends[i]!);
    this.kinds = Uint8Array.from(order, (i) => kinds[i]!);
    this.types = Uint8Array.from(order, (i) => types[i]!);
    this.data = Float64Array.from(order, (i) => data[i]!);
  }
}
