/** In which order formulas are worked out, and which lead back to themselves. */
import type { FunctionSpec } from "../../../functions/contract.js";
import type { Area } from "../formula/areas.js";
import { FileRefused } from "../refusal.js";
import type { FileCell } from "../sheet/cells.js";
import type { LoadedBook } from "./load.js";
import type { Clock } from "./nodes-clock.js";
import { nodesOf } from "./nodes.js";
import type { FormulaNode, Nodes } from "./nodes.js";

export interface Order {
  /** Every formula after all that it reads. */
  readonly nodes: readonly FormulaNode[];
  /** What each formula reads, by its index. */
  readonly reads: readonly (readonly FormulaNode[])[];
  /** Formulas on a circle of references. */
  readonly circular: ReadonlySet<FormulaNode>;
}

/** A column of running totals over formulas has half the square of its rows; some ten bytes each. */
const MOST_LINKS = 20_000_000;

/** Depth first, with a stack of its own: a chain of formulas may be as long as a sheet. */
function orderOf({ all, within }: Nodes): Order {
  let links = 0;
  const reads = all.map((node) => {
    const found = new Set<FormulaNode>();
    for (const area of node.prepared.areas) for (const other of within(area)) found.add(other);
    links += found.size;
    if (links > MOST_LINKS) {
      throw new FileRefused(
        `The formulas of the workbook read the results of others more than ${MOST_LINKS} times, the most that is followed. Split it.`,
      );
    }
    return [...found];
  });
  const state = new Uint8Array(all.length);
  const ordered: FormulaNode[] = [];
  const circular = new Set<FormulaNode>();
  const stack: { node: FormulaNode; next: number }[] = [];
  for (const start of all) {
    if (state[start.index] !== 0) continue;
    stack.push({ node: start, next: 0 });
    state[start.index] = 1;
    while (stack.length > 0) {
      const top = stack[stack.length - 1]!;
      const other = reads[top.node.index]?.[top.next++];
      if (other === undefined) {
        state[top.node.index] = 2;
        ordered.push(top.node);
        stack.pop();
      } else if (state[other.index] === 0) {
        state[other.index] = 1;
        stack.push({ node: other, next: 0 });
      } else if (state[other.index] === 1) {
        // Everything from there up to here lies on the circle.
        for (let i = stack.length - 1; i >= 0; i--) {
          const { node } = stack[i]!;
          circular.add(node);
          if (node === other) break;
        }
      }
    }
  }
  return { nodes: ordered, reads, circular };
}

/** @param apart first cells of runs that have to go cell by cell; those on a circle, where only rows follow each other, are added */
export function planOf(
  book: LoadedBook,
  specs: readonly FunctionSpec[],
  apart: Set<FileCell>,
  clock?: Clock,
  reached?: ReadonlyMap<FileCell, Area>,
): { nodes: Nodes; order: Order } {
  for (;;) {
    const nodes = nodesOf(book, specs, apart, clock, reached);
    const order = orderOf(nodes);
    const runs = [...order.circular].filter(({ run }) => run !== undefined);
    if (runs.length === 0) return { nodes, order };
    for (const { cell } of runs) apart.add(cell);
  }
}
