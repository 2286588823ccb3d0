/** Queues what fills a free sheet of Excel: looks, typed values and names first, formulas when all tables and names stand. */
/// <reference types="office-js" />
import type { Cell } from "../../functions/contract.js";
import type { FreeCell, FreeLook, FreeSheet } from "../../templates/contract.js";
import { excelFormula } from "../described-formula.js";
import { isFormula, tableOn } from "../described-table.js";
import { boxFormula, boxName } from "../picture-boxes.js";
import type { TableInfo } from "../port.js";
import { lightTones as tones } from "../tones.js";
import { offer, points, written } from "./fill.js";
import type { SheetPlan } from "./plan.js";
import { workingColumns } from "../working-columns.js";

/** Fill, ink and weight of each look that has one. */
const looks: Readonly<
  Record<FreeLook, { fill?: string; ink?: string; bold?: boolean; italic?: boolean; wrap?: boolean }>
> = {
  typed: { fill: tones.input },
  computed: { fill: tones.computed },
  header: { fill: tones.computed, italic: true, wrap: true },
  typedHeader: { fill: tones.input, wrap: true },
  subheading: { ink: tones.accent, bold: true },
  label: {},
  words: { wrap: true },
  strong: { bold: true, wrap: true },
  muted: { ink: tones.muted },
};

export function fillFree(sheet: Excel.Worksheet, plan: SheetPlan<FreeSheet>, names: Excel.NamedItemCollection): void {
  const { cells, widths, heights = {} } = plan.sheet;
  widths.forEach((width, column) => {
    sheet.getRangeByIndexes(0, column, 1, 1).format.columnWidth = width * points;
  });
  const working = workingColumns(plan.sheet);
  if (working.length > 0) sheet.getRangeByIndexes(0, working[0]!, 1, working.length).columnHidden = true;
  for (const [row, height] of Object.entries(heights))
    sheet.getRangeByIndexes(plan.first + Number(row), 0, 1, 1).format.rowHeight = height * points;
  for (const cell of cells) {
    const area = areaOf(sheet, plan, cell);
    const { fill, ink = tones.ink, bold = false, italic = false, wrap = false } = looks[cell.look];
    if (fill !== undefined) area.format.fill.color = fill;
    area.format.font.color = ink;
    if (bold) area.format.font.bold = true;
    if (italic) area.format.font.italic = true;
    if (wrap) area.format.wrapText = true;
    if (cell.format !== undefined) area.numberFormat = block(cell, cell.format);
    if (cell.across !== undefined && cell.across > 1) area.merge();
    if (cell.look === "typed") offer(area, cell.choices);
    // Of cells merged into one the first, as everywhere else; of a block the whole.
    if (cell.name !== undefined) names.add(cell.name, cell.size === undefined ? anchor(sheet, plan, cell) : area);
    const { value = null, values } = cell;
    if (values !== undefined && values.length > 0)
      filled(sheet, plan, cell, values).values = values.map((row) => row.map((one) => written(one ?? "")));
    else if (value !== null && !isFormula(value)) anchor(sheet, plan, cell).values = [[written(value)]];
  }
  for (const box of plan.sheet.pictures ?? [])
    names.add(boxName(box), `=${boxFormula(box, plan.name, plan.first)}`).visible = false;
}

export function fillFreeFormulas(
  sheet: Excel.Worksheet,
  plan: SheetPlan<FreeSheet>,
  tables: readonly TableInfo[],
): void {
  for (const cell of plan.sheet.cells) {
    const { value = null } = cell;
    if (!isFormula(value)) continue;
    anchor(sheet, plan, cell).formulas = [[excelFormula(value, tables, tableOn(tables, plan.name)).formula]];
  }
}

function areaOf(
  sheet: Excel.Worksheet,
  { first }: SheetPlan,
  { row, column, size, across = 1 }: FreeCell,
): Excel.Range {
  return sheet.getRangeByIndexes(first + row, column, size?.rows ?? 1, size?.columns ?? across);
}

/** What of a block its values take up. */
function filled(
  sheet: Excel.Worksheet,
  { first }: SheetPlan,
  { row, column }: FreeCell,
  values: readonly (readonly Cell[])[],
): Excel.Range {
  return sheet.getRangeByIndexes(first + row, column, values.length, values[0]?.length ?? 1);
}

function anchor(sheet: Excel.Worksheet, { first }: SheetPlan, { row, column }: FreeCell): Excel.Range {
  return sheet.getRangeByIndexes(first + row, column, 1, 1);
}

function block({ size, across = 1 }: FreeCell, format: string): string[][] {
  return Array.from({ length: size?.rows ?? 1 }, () => Array.from({ length: size?.columns ?? across }, () => format));
}
