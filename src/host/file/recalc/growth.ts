/** Dynamic arrays that take up more cells than before: what reads those has to come after them. */
import type { Area } from "../formula/areas.js";
import type { FileCell } from "../sheet/cells.js";
import type { FormulaNode } from "./nodes.js";
import type { Order } from "./order.js";

const meet = (a: Area, b: Area): boolean =>
  a.sheet === b.sheet &&
  a.startRow <= b.endRow &&
  b.startRow <= a.endRow &&
  a.startColumn <= b.endColumn &&
  b.startColumn <= a.endColumn;

/** Both, from where both begin. */
const widest = (a: Area, b: Area): Area => ({
  ...a,
  endRow: Math.max(a.endRow, b.endRow),
  endColumn: Math.max(a.endColumn, b.endColumn),
});

/**
 * Notes the arrays that have grown into cells which another formula reads without having waited for them, or which
 * another result takes up as well.
 * @param reached what each array takes up now
 * @param known gets those, by their cells; they are to be worked out once more
 */
export function noteGrown(
  { nodes, reads }: Order,
  reached: ReadonlyMap<FormulaNode, Area>,
  known: Map<FileCell, Area>,
): void {
  for (const [node, area] of reached) {
    const before = known.get(node.cell) ?? node.range;
    if (area.endRow <= before.endRow && area.endColumn <= before.endColumn) continue;
    const isInTheWay = nodes.some((other) => {
      if (other !== node && meet(area, reached.get(other) ?? known.get(other.cell) ?? other.range)) return true;
      return other.prepared.areas.some((one) => meet(area, one)) && !reads[other.index]!.includes(node);
    });
    if (isInTheWay) known.set(node.cell, widest(before, area));
  }
}
