/** What the pane reads from the workbook: the selected cell, and all cells of a sheet in which our functions fail. */
/// <reference types="office-js" />
import { localAddress, parseAddress, type CellAddress } from "./address.js";
import { explain, isOurs, stillSays } from "./explain.js";
import type { KeptMessage, KeptMessages } from "./messages.js";

export interface CellReport {
  readonly address: string;
  /** As the cell shows it. */
  readonly text: string;
  /** Why it shows an error, where one of ours stands in it. */
  readonly message: string | undefined;
}

export interface Finding {
  readonly cell: CellAddress;
  readonly address: string;
  readonly error: string;
  readonly message: string;
}

export interface SheetCheck {
  readonly sheet: string;
  /** Formulas that call a function of ours. */
  readonly formulas: number;
  readonly findings: readonly Finding[];
}

/** A call of Excel on the web may not grow past 5 MB. */
const cellsPerCall = 20_000;

export class Reading {
  /** @param blankErrors whether our errors show as an empty text */
  constructor(
    private readonly kept: KeptMessages,
    private readonly blankErrors: boolean,
  ) {}

  /** The selected cell, or the first of the selected. */
  selected(): Promise<CellReport> {
    return Excel.run(async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load("address, values, formulas, text");
      await context.sync();
      const at = parseAddress(cell.address);
      const said = at && this.kept.at(at);
      const stands = said !== undefined && stillSays(said, await formulaAt(context, said.formulaAt));
      return {
        address: at === undefined ? cell.address : localAddress(at),
        text: String(cell.text[0]?.[0] ?? ""),
        message: this.explain(cell.values[0]?.[0], cell.formulas[0]?.[0], stands ? said : undefined),
      };
    });
  }

  /** Looks through the used part of the sheet in front, so many rows at a time. */
  check(): Promise<SheetCheck> {
    return Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      const used = sheet.getUsedRangeOrNullObject(true);
      sheet.load("name");
      used.load("rowIndex, columnIndex, rowCount, columnCount");
      await context.sync();
      const ours = new Map<string, string>();
      const findings: Finding[] = [];
      const last = used.isNullObject ? 0 : used.rowIndex + used.rowCount;
      const step = used.isNullObject ? 1 : Math.max(1, Math.floor(cellsPerCall / used.columnCount));
      for (let from = used.isNullObject ? 0 : used.rowIndex; from < last; from += step) {
        const part = sheet.getRangeByIndexes(from, used.columnIndex, Math.min(step, last - from), used.columnCount);
        part.load("values, formulas");
        await context.sync();
        part.formulas.forEach((row: unknown[], r) => {
          row.forEach((formula, c) => {
            const cell = { sheet: sheet.name, row: from + r, column: used.columnIndex + c };
            const address = localAddress(cell);
            if (isOurs(formula)) ours.set(address, formula);
            const value: unknown = part.values[r]?.[c];
            const message = this.explain(value, formula, this.saidIn(cell, ours));
            if (message !== undefined) findings.push({ cell, address, error: String(value), message });
          });
        });
      }
      return { sheet: sheet.name, formulas: ours.size, findings };
    });
  }

  /** What is kept for a cell, where its formula still says so. A formula stands above or left of what it spills. */
  private saidIn(cell: CellAddress, ours: ReadonlyMap<string, string>): KeptMessage | undefined {
    const said = this.kept.at(cell);
    return said !== undefined && stillSays(said, ours.get(localAddress(said.formulaAt))) ? said : undefined;
  }

  private explain(value: unknown, formula: unknown, said: KeptMessage | undefined): string | undefined {
    return explain(value, formula, said, this.blankErrors);
  }
}

async function formulaAt(context: Excel.RequestContext, at: CellAddress): Promise<unknown> {
  const anchor = context.workbook.worksheets.getItem(at.sheet).getRange(localAddress(at));
  anchor.load("formulas");
  await context.sync();
  return anchor.formulas[0]?.[0];
}

/** Tells when another cell is selected. */
export async function onSelection(listener: () => void): Promise<void> {
  await Excel.run(async (context) => {
    context.workbook.onSelectionChanged.add(() => {
      listener();
      return Promise.resolve();
    });
    await context.sync();
  });
}

/** Selects a cell, on its sheet. */
export async function goTo(cell: CellAddress): Promise<void> {
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem(cell.sheet).getRange(localAddress(cell)).select();
    await context.sync();
  });
}
