/**
 * How cells look beyond their own style, for the eye only: a grade's bars and fill, and in the dark the fills of
 * our own in place of Univer's turned-round ones.
 */
import {
  CellValueType,
  HorizontalAlign,
  type ICellData,
  type ICellDataForSheetInterceptor,
  InterceptorEffectEnum,
  invertColorByMatrix,
  type IStyleData,
  type Nullable,
} from "@univerjs/core";
import { INTERCEPTOR_POINT, SetWorksheetDefaultStyleMutation, SheetInterceptorService } from "@univerjs/sheets";
import type { FreeCell } from "../../templates/contract.js";
import { freeCellAt } from "../book/free.js";
import { columnAt, type ColumnPlace, formColumns } from "../book/layout.js";
import type { LiveBook } from "../book/live.js";
import { bookId } from "../book/snapshot.js";
import { bookStyle } from "../book/styles.js";
import { darkTones, gradeBars, gradeOf, lightTones, type Tones } from "../../host/tones.js";

export interface Tints {
  setDark(dark: boolean): void;
}

export function tintCells(book: LiveBook): Tints {
  let dark = false;
  book.injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    // After the spill's value and its number format, before the last, which ends the chain.
    priority: 5,
    effect: InterceptorEffectEnum.Value | InterceptorEffectEnum.Style,
    handler: (cell, context, next) => next(tinted(cell, context.subUnitId, context.row, context.col)),
  });

  const setDark = (on: boolean): void => {
    dark = on;
    for (const sheet of book.workbook.getSheets()) {
      const defaultStyle: IStyleData = dark ? { ...bookStyle, bg: painted(darkTones.paper) } : bookStyle;
      const params = { unitId: bookId, subUnitId: sheet.getSheetId(), defaultStyle };
      book.commands.syncExecuteCommand(SetWorksheetDefaultStyleMutation.id, params);
    }
  };
  book.onOpened(() => {
    setDark(dark);
  });
  return { setDark };

  function tinted(
    cell: Nullable<ICellDataForSheetInterceptor>,
    sheetId: string,
    row: number,
    column: number,
  ): typeof cell {
    const sheet = book.sheet(sheetId);
    if (sheet?.kind === "table") {
      const { firstRow, lastRow } = book.rowsOf(sheet);
      if (row < firstRow - 1 || row > lastRow) return cell;
      const place = columnAt(sheet, column);
      if (place === undefined) return cell;
      const grade = row >= firstRow && place.computed?.grade === true ? gradeOf(cell?.v) : undefined;
      if (grade !== undefined) return gradeCell(cell, grade);
      if (row < firstRow) return zoneTint(cell, place.computed !== undefined);
      const shown = place.computed === undefined ? marked(cell, place.column.choices) : wordsLeft(cell);
      return zoneTint(shown, place.computed !== undefined);
    }
    if (sheet?.kind === "form" && column === formColumns.value && row >= sheet.firstFieldRow) {
      const field = sheet.sheet.fields[row - sheet.firstFieldRow];
      if (field?.definedName !== undefined)
        return zoneTint(marked(cell, field.choices), typeof field.value === "string" && field.value.startsWith("="));
    }
    const free = freeCellAt(sheet, { row, column });
    if (free !== undefined) return freeTint(cell, free);
    return cell;
  }

  function freeTint(cell: Nullable<ICellDataForSheetInterceptor>, free: FreeCell): typeof cell {
    const grade = free.grade === true ? gradeOf(cell?.v) : undefined;
    if (grade !== undefined) return gradeCell(cell, grade);
    if (free.look === "typed" || free.look === "typedHeader") return zoneTint(marked(cell, free.choices), false);
    return free.look === "computed" || free.look === "header" ? zoneTint(wordsLeft(cell), true) : cell;
  }

  function zoneTint(cell: Nullable<ICellDataForSheetInterceptor>, computed: boolean): typeof cell {
    if (!dark) return cell;
    return withStyle(cell, { bg: painted(computed ? darkTones.computed : darkTones.input) });
  }

  function gradeCell(cell: Nullable<ICellDataForSheetInterceptor>, grade: number): typeof cell {
    const tones: Tones = dark ? darkTones : lightTones;
    const tone = grade === 0 ? undefined : tones.grades[grade - 1]!;
    const shown: ICellData = { ...cell, v: gradeText(cell?.v, grade), t: null };
    return tone === undefined
      ? zoneTint(shown, true)
      : withStyle(shown, { bg: painted(tone.fill), cl: painted(tone.ink) });
  }

  /** Univer turns every colour round in the dark; turned round twice it is itself again. */
  function painted(rgb: string): { rgb: string } {
    return { rgb: dark ? turnedRound(rgb) : rgb };
  }
}

/** A corner on what is not among the choices: a mark, no more; it may be typed. */
function marked(
  cell: Nullable<ICellDataForSheetInterceptor>,
  choices: readonly string[] | undefined,
): Nullable<ICellDataForSheetInterceptor> {
  if (
    choices === undefined ||
    cell?.v === undefined ||
    cell.v === null ||
    cell.v === "" ||
    choices.includes(String(cell.v))
  )
    return cell;
  return { ...cell, markers: { ...cell.markers, tr: { size: 7, color: lightTones.grades[2].fill } } };
}

/** Words in a column of numbers, such as a refusal, are read from their beginning, also where they do not fit. */
function wordsLeft(cell: Nullable<ICellDataForSheetInterceptor>): typeof cell {
  if (typeof cell?.v !== "string" || cell.t === CellValueType.NUMBER || !/\p{L}{3}/u.test(cell.v)) return cell;
  return withStyle(cell, { ht: HorizontalAlign.LEFT });
}

/** Number, words and bars: "▂ 2 of 4"; the words where the formula gives them. */
function gradeText(value: unknown, grade: number): string {
  const words = typeof value === "string" ? value.trim() : `${String(grade)} of 4`;
  return `${gradeBars[grade] ?? ""} ${words}`;
}

/** The words for a screen reader and tests: what the place's column is called. */
export function columnTitle(place: ColumnPlace): string {
  const { header, unit } = place.column;
  return unit === undefined ? header : `${header}, ${unit}`;
}

function withStyle(cell: Nullable<ICellDataForSheetInterceptor>, style: IStyleData): ICellDataForSheetInterceptor {
  return { ...cell, interceptorStyle: { ...cell?.interceptorStyle, ...style } };
}

const turned = new Map<string, string>();

function turnedRound(rgb: string): string {
  const known = turned.get(rgb);
  if (known !== undefined) return known;
  const parts = [1, 3, 5].map((at) => Number.parseInt(rgb.slice(at, at + 2), 16)) as [number, number, number];
  const hex = invertColorByMatrix(parts).map((part) =>
    Math.max(0, Math.min(255, Math.round(part)))
      .toString(16)
      .padStart(2, "0"),
  );
  const result = `#${hex.join("")}`;
  turned.set(rgb, result);
  return result;
}
