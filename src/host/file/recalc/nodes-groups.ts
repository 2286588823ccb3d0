/** The formulas of a sheet, those below one another that are the same in R1C1 together. */
import { moveFormula } from "../formula/segments.js";
import type { FileCell } from "../sheet/cells.js";
import type { LoadedSheet } from "./load.js";
import { RowTemplate } from "./runs-text.js";

export interface Group {
  readonly kind: "single" | "array" | "dynamic" | "data table";
  /** One below the other without a gap; only single ones are ever more than one. */
  readonly cells: FileCell[];
  /** The formula of the first, written out. */
  readonly text: string;
  /** Gives the text of the others; there from the second cell on. */
  template?: RowTemplate;
}

interface SharedFormula {
  readonly text: string;
  readonly row: number;
  readonly column: number;
}

/** The last group of a column, and which shared formula it follows. */
interface Open {
  readonly group: Group;
  shared: SharedFormula | undefined;
}

export function groupsOf(
  sheet: LoadedSheet,
  dynamicArrays: ReadonlySet<number>,
  isSheet: (name: string) => boolean,
): Group[] {
  const groups: Group[] = [];
  const open = new Map<number, Open>();
  const shared = new Map<string, SharedFormula>();
  const first = firstShared(sheet.formulaCells);
  for (const cell of sheet.formulaCells) {
    const { row, column } = cell;
    const { kind: written, sharedIndex, text } = cell.formula!;
    let base: SharedFormula | undefined;
    if (written === "shared" && sharedIndex !== undefined) {
      if (text !== "") shared.set(sharedIndex, { text, row, column });
      base = shared.get(sharedIndex) ?? first.get(sharedIndex);
    }
    const kind = kindOf(cell, dynamicArrays);
    const last = open.get(column);
    if (kind === "single" && last && row === last.group.cells[0]!.row + last.group.cells.length) {
      const { group } = last;
      const template = (group.template ??= RowTemplate.of(group.text, group.cells[0]!.row, isSheet));
      // A follower of the same shared formula is the same in R1C1 by what it is.
      const isFollower = text === "" && base !== undefined && base === last.shared && template.fits(row);
      if (isFollower || (text !== "" && template.textAt(row) === text && template.fits(row))) {
        group.cells.push(cell);
        if (!isFollower) last.shared = base;
        continue;
      }
    }
    const full = text === "" && base ? moveFormula(base.text, row - base.row, column - base.column, isSheet) : text;
    const group: Group = { kind, cells: [cell], text: full };
    groups.push(group);
    if (kind === "single") open.set(column, { group, shared: base });
    else open.delete(column);
  }
  return groups;
}

/** A part that no program wrote may have followers before the cell that has their formula. */
function firstShared(cells: readonly FileCell[]): ReadonlyMap<string, SharedFormula> {
  const first = new Map<string, SharedFormula>();
  for (const { row, column, formula } of cells) {
    const { kind, sharedIndex, text } = formula!;
    if (kind !== "shared" || sharedIndex === undefined || text === "" || first.has(sharedIndex)) continue;
    first.set(sharedIndex, { text, row, column });
  }
  return first;
}

function kindOf({ formula, cellMetadata }: FileCell, dynamicArrays: ReadonlySet<number>): Group["kind"] {
  if (formula?.kind === "dataTable") return "data table";
  if (dynamicArrays.has(cellMetadata)) return "dynamic";
  return formula?.kind === "array" ? "array" : "single";
}
