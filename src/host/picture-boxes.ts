/**
 * Where a workbook keeps room for pictures: a hidden name a box, which means the box's cells and the cell that shows the
 * picture's number, so that both move with the rows that a person inserts above them.
 */
import type { PictureBox } from "../templates/contract.js";
import { columnLetters } from "./embedded/structured.js";
import { parseReference, type RangeReference } from "./reference.js";

export interface BoxPlace {
  /** "exception_1_thermogram": what it is called after the prefix of its name. */
  readonly key: string;
  readonly kind: PictureBox["kind"];
  readonly sheet: string;
  readonly area: Omit<RangeReference, "sheet">;
  readonly numberAt: { readonly row: number; readonly column: number };
}

const PREFIX = "GREYBODY_PICTURE_";
const KINDS = ["thermogram", "photo"] as const;

/** The name of a box: the kind of picture stands at its end. */
export function boxName(box: Pick<PictureBox, "key" | "kind">): string {
  return PREFIX + boxKey(box);
}

/** What a box is called behind the prefix. */
export function boxKey({ key, kind }: Pick<PictureBox, "key" | "kind">): string {
  const plain = key.replaceAll(/[^\p{L}\p{N}]+/gu, "_");
  return plain.endsWith(kind) ? plain : `${plain}_${kind}`;
}

/** What the name of a box means: its cells, and the cell of its number. @param first the sheet's row of the description's row 0 */
export function boxFormula(box: PictureBox, sheet: string, first: number): string {
  const { row, column, rows, columns, numberAt } = box;
  const corner = (r: number, c: number): string => `$${columnLetters(c)}$${first + r + 1}`;
  const prefix = `'${sheet.replaceAll("'", "''")}'!`;
  const last = corner(row + rows - 1, column + columns - 1);
  return `${prefix}${corner(row, column)}:${last},${prefix}${corner(numberAt.row, numberAt.column)}`;
}

/** Of a workbook's names those that mean boxes; what has lost its cells (#REF!) is none any more. */
export function boxesIn(names: readonly { readonly name: string; readonly formula: string }[]): BoxPlace[] {
  return names.flatMap(({ name, formula }) => {
    if (!name.toUpperCase().startsWith(PREFIX)) return [];
    const key = name.slice(PREFIX.length);
    const kind = KINDS.find((one) => key.toLowerCase().endsWith(one));
    const [box, number, ...others] = parts(formula).map(parseReference);
    if (kind === undefined || box?.sheet === undefined || number?.sheet !== box.sheet || others.length > 0) return [];
    const { sheet, ...area } = box;
    return [{ key, kind, sheet, area, numberAt: { row: number.startRow, column: number.startColumn } }];
  });
}

/** The references of a union; a comma may stand in a sheet's name too. */
function parts(formula: string): string[] {
  return formula.replace(/^=|^=?\((.*)\)$/, "$1").match(/(?:'(?:[^']|'')*'|[^,'])+/g) ?? [];
}

/** The name that a picture of ours has in its drawing; with what its box showed when it was placed. */
export const pictureName = (key: string, shown: string): string => `${PREFIX}${key} ${shown}`;

/** Undefined for other people's pictures. */
export function ownPicture(name: string): { readonly key: string; readonly shown: string } | undefined {
  if (!name.startsWith(PREFIX)) return undefined;
  const [key = "", ...shown] = name.slice(PREFIX.length).split(" ");
  return { key, shown: shown.join(" ") };
}

/** Pixels that are left free around a picture in its box. */
export const PICTURE_MARGIN = 4;

/** As large as fits into a box of so many pixels, the ratio kept. */
export function fitted(
  picture: { readonly width: number; readonly height: number },
  box: { readonly width: number; readonly height: number },
): { readonly width: number; readonly height: number } {
  const scale = Math.min(
    Math.max(1, box.width - 2 * PICTURE_MARGIN) / picture.width,
    Math.max(1, box.height - 2 * PICTURE_MARGIN) / picture.height,
  );
  const side = (pixels: number): number => Math.max(1, Math.round(pixels * scale));
  return { width: side(picture.width), height: side(picture.height) };
}
