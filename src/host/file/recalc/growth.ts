/** Dynamic arrays that take up more cells than before: what reads those has to come after them. */
import type { Area } from "../formula/areas.js";
import type { FileCell } from "../sheet/cells.js";
import { Lookup } from "./nodes-lookup.js";
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
  const isGrown = ([{ cell, range }, area]: readonly [FormulaNode, Area]): boolean => {
    const before = known.get(cell) ?? range;
    return area.endRow > before.endRow || area.endColumn > before.endColumn;
  };
  const grown = [...reached].filter(isGrown);
  if (grown.length === 0) return;
  const taken = new Lookup(nodes, (node) => reached.get(node) ?? known.get(node.cell) ?? node.range);
  const readers = readersBySheet(nodes);
  for (const [node, area] of grown) {
    const isInTheWay =
      taken.within(area).some((other) => other !== node) ||
      readers.get(area.sheet)?.some((other) => readsWithoutWaiting(other, node, area, reads)) === true;
    if (isInTheWay) known.set(node.cell, widest(known.get(node.cell) ?? node.range, area));
  }
}

function readsWithoutWaiting(other: FormulaNode, node: FormulaNode, area: Area, reads: Order["reads"]): boolean {
  return other.prepared.areas.some((one) => meet(area, one)) && !reads[other.index]!.includes(node);
}

/** The formulas that read anything of a sheet. */
function readersBySheet(nodes: readonly FormulaNode[]): Map<number, FormulaNode[]> {
  const found = new Map<number, FormulaNode[]>();
  for (const node of nodes) {
    for (const sheet of new Set(node.prepared.areas.map((area) => area.sheet))) {
      const readers = found.get(sheet);
      if (readers) readers.push(node);
      else found.set(sheet, [node]);
    }
  }
  return found;
}
