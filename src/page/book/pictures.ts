/** Pictures in the boxes of the open book: each where its number is asked for, also when the order has changed since. */
import { base64Of } from "../../host/base64.js";
import { boxKey } from "../../host/picture-boxes.js";
import type { PictureBoxInfo, PlacedPicture } from "../../host/port.js";
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
    const place = placeOf(box);
    return picture === undefined ? place : { ...picture, ...place };
  });
}

/** A box without a picture. */
function placeOf({ key, row, column, rows, columns, numberAt, kind }: PictureBox): PictureBox {
  return { key, row, column, rows, columns, numberAt, kind };
}

const freeSheets = (book: LiveBook): FreeLayout[] =>
  book.layout.sheets.flatMap((one) => (one.kind === "free" && one.sheet.pictures !== undefined ? [one] : []));

/** What the pane is told of the boxes. */
export function boxInfos(book: LiveBook): PictureBoxInfo[] {
  return freeSheets(book).flatMap((sheet) => {
    const name = book.worksheet(sheet.id).getName();
    return filledBoxes(book, sheet).map(({ box, asks, picture }) => ({
      key: boxKey(box),
      kind: box.kind,
      at: { sheet: name, row: sheet.first + box.row, column: box.column },
      shown: asks,
      held: picture === undefined ? undefined : asks,
    }));
  });
}

/** @returns how many stand in their boxes now */
export function placeInBoxes(book: LiveBook, pictures: readonly PlacedPicture[], keeps: ReadonlySet<string>): number {
  const placed = new Map(pictures.map((one) => [one.key, one]));
  let count = 0;
  const boxes = freeSheets(book).map((sheet) => {
    const own = filledBoxes(book, sheet).map(({ box, asks, picture: held }): PictureBox => {
      const given = placed.get(boxKey(box));
      const stays = given === undefined && keeps.has(boxKey(box)) ? held : undefined;
      if (given === undefined && stays === undefined) return placeOf(box);
      count++;
      if (given === undefined) return { ...stays, ...placeOf(box), shown: asks };
      const { bytes, orientation } = given.picture;
      return {
        ...placeOf(box),
        base64: base64Of(bytes),
        alternative: `${box.kind} ${given.shown}`,
        shown: given.shown,
        orientation,
      };
    });
    return [sheet.id, own] as const;
  });
  book.setPictures(new Map(boxes));
  return count;
}
