/** Pictures in the boxes of the open book: each where its number is asked for, also when the order has changed since. */
import type { PictureBox } from "../../templates/contract.js";
import type { FreeLayout } from "./layout.js";
import type { LiveBook } from "./live.js";

export interface FilledBox {
  readonly box: PictureBox;
  /** The number that it asks for; "" where it is not used. */
  readonly asks: string;
  /** The picture that belongs there, as the box of a description that brings it along. */
  readonly picture: PictureBox | undefined;
}

export function filledBoxes(book: LiveBook, { id, sheet, first }: FreeLayout): FilledBox[] {
  const pictures = new Map(
    book.layout.sheets
      .flatMap((one) => (one.kind === "free" ? (one.sheet.pictures ?? []) : []))
      .filter(({ base64, shown }) => base64 !== undefined && shown !== undefined)
      .map((one) => [`${one.kind} ${one.shown}`, one]),
  );
  return (sheet.pictures ?? []).map((box) => {
    const { row, column } = box.numberAt;
    const asks = String(book.worksheet(id).getCell(first + row, column)?.v ?? "").trim();
    const isItsOwn = box.base64 !== undefined && box.shown === undefined;
    return { box, asks, picture: isItsOwn ? box : pictures.get(`${box.kind} ${asks}`) };
  });
}

/** The boxes as they are to be saved: what belongs to each now, and nothing of what does not. */
export function boxesNow(book: LiveBook, sheet: FreeLayout): PictureBox[] {
  return filledBoxes(book, sheet).map(({ box, picture }) => {
    if (picture === box) return box;
    const { key, row, column, rows, columns, numberAt, kind } = box;
    const place = { key, row, column, rows, columns, numberAt, kind };
    return picture === undefined ? place : { ...picture, ...place };
  });
}
