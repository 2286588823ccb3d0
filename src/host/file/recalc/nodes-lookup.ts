/** Finds formulas by the cells that their results take up. */
import type { Area } from "../formula/areas.js";

interface Stretch<Node> {
  readonly start: number;
  readonly end: number;
  readonly node: Node;
  /** Largest end of this one and all before it. */
  reach: number;
}

/** Per sheet and column the stretches of rows that belong to a formula, from the top. */
export class Lookup<Node extends { readonly range: Area }> {
  private readonly sheets = new Map<number, Map<number, Stretch<Node>[]>>();

  /** Those that take up a cell together with another one. */
  readonly overlapping: ReadonlySet<Node>;

  /** @param areaOf the cells that a result takes up, where they are more than the saved ones */
  constructor(all: readonly Node[], areaOf: (node: Node) => Area = ({ range }) => range) {
    for (const node of all) {
      const { sheet, startRow, endRow, startColumn, endColumn } = areaOf(node);
      const columns = mapIn(this.sheets, sheet, () => new Map<number, Stretch<Node>[]>());
      for (let c = startColumn; c <= endColumn; c++) {
        mapIn(columns, c, () => []).push({ start: startRow, end: endRow, node, reach: 0 });
      }
    }
    const overlapping = new Set<Node>();
    for (const columns of this.sheets.values()) {
      for (const stretches of columns.values()) {
        stretches.sort((a, b) => a.start - b.start);
        let reach = -1;
        for (const [i, stretch] of stretches.entries()) {
          const next = stretches[i + 1];
          if (stretch.start <= reach || (next && next.start <= stretch.end)) overlapping.add(stretch.node);
          stretch.reach = reach = Math.max(reach, stretch.end);
        }
      }
    }
    this.overlapping = overlapping;
  }

  /** The formula whose result a cell shows, or undefined for a constant. */
  at(sheet: number, row: number, column: number): Node | undefined {
    const stretches = this.sheets.get(sheet)?.get(column);
    if (!stretches) return undefined;
    for (let i = firstAfter(stretches, row) - 1; i >= 0 && stretches[i]!.reach >= row; i--) {
      if (stretches[i]!.end >= row) return stretches[i]!.node;
    }
    return undefined;
  }

  /** The formulas whose results lie in an area, each once. */
  within({ sheet, startRow, endRow, startColumn, endColumn }: Area): Node[] {
    const columns = this.sheets.get(sheet);
    if (!columns) return [];
    const found = new Set<Node>();
    const visit = (stretches: readonly Stretch<Node>[]): void => {
      for (let i = firstAfter(stretches, endRow) - 1; i >= 0 && stretches[i]!.reach >= startRow; i--) {
        if (stretches[i]!.end >= startRow) found.add(stretches[i]!.node);
      }
    };
    if (endColumn - startColumn < columns.size) {
      for (let c = startColumn; c <= endColumn; c++) visit(columns.get(c) ?? []);
    } else {
      for (const [c, stretches] of columns) if (c >= startColumn && c <= endColumn) visit(stretches);
    }
    return [...found];
  }
}

function mapIn<Key, Value>(map: Map<Key, Value>, key: Key, make: () => Value): Value {
  let value = map.get(key);
  if (value === undefined) map.set(key, (value = make()));
  return value;
}

/** Index of the first stretch that begins below a row. */
function firstAfter(stretches: readonly { readonly start: number }[], row: number): number {
  let [low, high] = [0, stretches.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (stretches[middle]!.start <= row) low = middle + 1;
    else high = middle;
  }
  return low;
}
