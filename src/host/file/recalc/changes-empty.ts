/** Excel hands an empty cell over as 0, and nothing can tell that from 0 °C; here it is known as empty. */
import type { ArgumentSpec, Cell, FunctionSpec } from "../../../functions/contract.js";
import { NAMESPACE } from "../../../functions/describe.js";
import { areaOf } from "../formula/areas.js";
import type { Area } from "../formula/areas.js";
import { segmentsOf, sheetName } from "../formula/segments.js";
import { significant, treeOf } from "../formula/tree.js";
import type { Expression } from "../formula/tree.js";
import type { LoadedBook } from "./load.js";
import type { FormulaNode } from "./nodes.js";

/** What such a difference is called. */
export const EMPTY_CELL = "empty cell, 0 in Excel";

/** 0 means something there, so that a bare reference to an empty cell is read as 0. */
const mayBeZero = ({ quantity, zeroIsBlank }: ArgumentSpec): boolean =>
  zeroIsBlank !== true && quantity !== "text" && quantity !== "band" && quantity !== "table";

/**
 * The cells that a formula hands to functions of ours by a bare reference where 0 would be taken for a value.
 * @param text as prepared for the engine
 */
function bareAreas(
  text: string,
  sheet: number,
  sheets: readonly { readonly name: string }[],
  specs: readonly FunctionSpec[],
): Area[] {
  const indexOf = (name: string): number => sheets.findIndex((one) => one.name.toLowerCase() === name.toLowerCase());
  const tree = treeOf(segmentsOf(text, (name) => indexOf(name) >= 0));
  const found: Area[] = [];
  const visit = (expression: Expression): void => {
    for (const item of expression) {
      if (item.kind === "group") item.inside.forEach(visit);
      if (item.kind !== "call") continue;
      const name = item.name.toUpperCase();
      const spec = specs.find((one) => name === `${NAMESPACE}.${one.name}`);
      for (const [i, arg] of item.args.entries()) {
        visit(arg);
        const [only, ...rest] = significant(arg);
        const argument = spec?.args[i];
        if (only?.kind !== "reference" || rest.length > 0 || !argument || !mayBeZero(argument)) continue;
        const { reference } = only;
        const on = reference.sheet === undefined ? sheet : indexOf(sheetName(reference.sheet));
        if (on >= 0) found.push(areaOf(reference, on));
      }
    }
  };
  if (tree) visit(tree);
  return found;
}

/** Tells of a row of a formula's result whether one of these cells is empty: in its own row where the range goes along with the result. */
export function emptyReader(
  book: LoadedBook,
  specs: readonly FunctionSpec[],
  valueAt: (sheet: number, row: number, column: number) => Cell,
): (node: FormulaNode, row: number) => boolean {
  const known = new Map<FormulaNode, readonly Area[]>();
  return (node, row) => {
    let areas = known.get(node);
    if (!areas) {
      areas = bareAreas(node.prepared.text, node.sheet.index, book.sheets, specs);
      known.set(node, areas);
    }
    const { range, run } = node;
    const height = range.endRow - range.startRow + 1;
    return areas.some((area) => {
      const moved = run?.areas.find((one) => isSame(one.area, area))?.startStep === 1;
      const goesAlong = !run && area.endRow - area.startRow + 1 === height;
      const [first, last] =
        moved || goesAlong ? [area.startRow + row, area.startRow + row] : [area.startRow, area.endRow];
      for (let r = first; r <= Math.min(last, first + MOST_LOOKED_AT); r++) {
        for (let c = area.startColumn; c <= area.endColumn; c++) if (valueAt(area.sheet, r, c) === null) return true;
      }
      return false;
    });
  };
}

const MOST_LOOKED_AT = 10_000;

const isSame = (a: Area, b: Area): boolean =>
  a.sheet === b.sheet && a.startRow === b.startRow && a.endRow === b.endRow && a.startColumn === b.startColumn;
