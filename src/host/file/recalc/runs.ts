/** Runs: cells below one another that hold the same formula of ours, the same in R1C1, worked out as one. */
import type { FunctionSpec } from "../../../functions/contract.js";
import type { Area } from "../formula/areas.js";
import type { Preparer, PreparedFormula } from "../formula/prepare.js";
import type { FileCell } from "../sheet/cells.js";
import type { RunArea } from "./runs-evaluate.js";
import { shapeOf } from "./runs-shape.js";
import type { Part } from "./runs-shape.js";
import type { RowTemplate } from "./runs-text.js";

/** Shorter ones are not worth it. */
export const LEAST_ROWS = 8;

export interface Run {
  /** One below the other. */
  readonly cells: readonly FileCell[];
  /** The formula of one of them. */
  readonly textAt: (index: number) => string;
  readonly part: Part;
  readonly areas: readonly RunArea[];
}

export interface RunSetting {
  readonly preparer: Preparer;
  readonly sheets: ReadonlyMap<string, number>;
  readonly specs: ReadonlyMap<string, FunctionSpec>;
}

/** The run that cells with one formula make, and what it reads; undefined where they go one by one. */
export function runOf(
  sheet: number,
  cells: readonly FileCell[],
  template: RowTemplate,
  { preparer, sheets, specs }: RunSetting,
): { run: Run; prepared: PreparedFormula } | undefined {
  const [first] = cells;
  if (first === undefined) return undefined;
  const textAt = (index: number): string => template.textAt(first.row + index);
  const probe = (index: number): { prepared: PreparedFormula; part: Part; areas: readonly Area[] } | undefined => {
    const place = { sheet, row: first.row + index, column: first.column, isArray: false };
    const prepared = preparer.prepare(textAt(index), place);
    if (prepared.distrust !== undefined || !prepared.isOurs || prepared.isVolatile) return undefined;
    const shape = shapeOf(prepared.text, sheet, sheets, specs);
    return shape && { prepared, ...shape };
  };
  const start = probe(0);
  const last = cells.length - 1;
  const end = start && probe(last);
  if (!end) return undefined;
  const skeleton = JSON.stringify(start.part);
  const areas = start.areas.map((area, i): RunArea | undefined => {
    const other = end.areas[i];
    const [startStep, endStep] = [
      stepOf(area.startRow, other?.startRow, last),
      stepOf(area.endRow, other?.endRow, last),
    ];
    return startStep === undefined || endStep === undefined ? undefined : { area, startStep, endStep };
  });
  if (!areas.every((area) => area !== undefined)) return undefined;
  // A table or a name may end somewhere on the way: the rows between are looked at too, closer at the beginning.
  for (let index = last; index > 0; index >>= 1) {
    const other = probe(index);
    if (!other || JSON.stringify(other.part) !== skeleton || other.areas.length !== areas.length) return undefined;
    if (!other.areas.every((area, i) => isAt(area, areas[i]!, index))) return undefined;
  }
  const whole = areas.map(({ area, endStep }) => ({ ...area, endRow: area.endRow + endStep * last }));
  return { run: { cells, textAt, part: start.part, areas }, prepared: { ...start.prepared, areas: whole } };
}

function stepOf(from: number, to: number | undefined, rows: number): 0 | 1 | undefined {
  if (to === from) return 0;
  return to === from + rows ? 1 : undefined;
}

function isAt(found: Area, { area, startStep, endStep }: RunArea, index: number): boolean {
  return (
    found.sheet === area.sheet &&
    found.startColumn === area.startColumn &&
    found.endColumn === area.endColumn &&
    found.startRow === area.startRow + startStep * index &&
    found.endRow === area.endRow + endStep * index
  );
}
