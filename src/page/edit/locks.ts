/**
 * What the sheet works out, and the frame it stands in, cannot be typed over, cleared, or taken apart: each try is
 * answered in words. Host writes and spills are mutations and pass.
 */
import { CustomCommandExecutionError, type ICommandInfo, type IRange } from "@univerjs/core";
import {
  AutoFillCommand,
  ClearSelectionAllCommand,
  ClearSelectionContentCommand,
  DeleteRangeMoveLeftCommand,
  DeleteRangeMoveUpCommand,
  InsertColCommand,
  InsertRangeMoveDownCommand,
  InsertRangeMoveRightCommand,
  MoveRangeCommand,
  RemoveColCommand,
  RemoveRowCommand,
  SetRangeValuesCommand,
  SheetsSelectionsService,
} from "@univerjs/sheets";
import type { Box } from "../book/a1.js";
import type { LiveBook } from "../book/live.js";
import { contentLock, type Lock, structureLock } from "./lock-rules.js";
import { writtenBox } from "./written.js";

interface Params {
  subUnitId?: string;
  toSubUnitId?: string;
  range?: IRange;
  ranges?: IRange[];
  fromRange?: IRange;
  toRange?: IRange;
  targetRange?: IRange;
  value?: unknown;
}

const content: readonly string[] = [
  SetRangeValuesCommand.id,
  ClearSelectionContentCommand.id,
  ClearSelectionAllCommand.id,
  AutoFillCommand.id,
  MoveRangeCommand.id,
];
const structure: Readonly<Record<string, "rows" | "columns" | "cells">> = {
  "sheet.command.insert-row": "rows",
  [RemoveRowCommand.id]: "rows",
  "sheet.command.move-rows": "rows",
  [InsertColCommand.id]: "columns",
  [RemoveColCommand.id]: "columns",
  "sheet.command.move-cols": "columns",
  // The table's own ways to take a sheet apart; the plugin does not export them.
  "sheet.command.table-insert-col": "columns",
  "sheet.command.table-insert-column-at": "columns",
  "sheet.command.table-remove-col": "columns",
  "sheet.command.table-remove-column-at": "columns",
  "sheet.command.table-insert-row": "cells",
  "sheet.command.table-insert-row-at": "cells",
  "sheet.command.table-remove-row": "cells",
  [InsertRangeMoveDownCommand.id]: "cells",
  [InsertRangeMoveRightCommand.id]: "cells",
  [DeleteRangeMoveUpCommand.id]: "cells",
  [DeleteRangeMoveLeftCommand.id]: "cells",
};

export function lockWorkedOutCells(book: LiveBook, say: (message: string) => void): void {
  const refuse = (lock: Lock | undefined): void => {
    if (lock === undefined) return;
    say(lock);
    throw new CustomCommandExecutionError(lock);
  };
  book.api.addEvent(book.api.Event.BeforeSheetEditStart, (event) => {
    const { row, column } = event;
    const cell: Box = { startRow: row, endRow: row, startColumn: column, endColumn: column };
    const lock = contentLock(book, book.activeSheetId(), cell);
    if (lock === undefined) return;
    event.cancel = true;
    say(lock);
  });
  book.commands.beforeCommandExecuted((info: Readonly<ICommandInfo>) => {
    const params = (info.params ?? {}) as Params;
    const sheetId = params.toSubUnitId ?? params.subUnitId ?? book.activeSheetId();
    const kind = structure[info.id];
    if (kind !== undefined) {
      const removes = info.id === RemoveRowCommand.id;
      for (const box of touched(params)) refuse(structureLock(book, sheetId, kind, box, removes));
    } else if (content.includes(info.id)) {
      const boxes =
        info.id === SetRangeValuesCommand.id
          ? [writtenBox(params)].filter((box) => box !== undefined)
          : touched(params);
      for (const box of boxes) refuse(contentLock(book, sheetId, box));
    }
  });

  function touched(params: Params): Box[] {
    const named = [params.range, params.fromRange, params.toRange, params.targetRange, ...(params.ranges ?? [])];
    const boxes = named.filter((range) => range !== undefined);
    if (boxes.length > 0) return boxes;
    return book.injector
      .get(SheetsSelectionsService)
      .getCurrentSelections()
      .map((selection) => selection.range);
  }
}
