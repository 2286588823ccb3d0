/** A file's pictures in the boxes of a description. */
import type { BookContents } from "../contents.js";
import type { FreeSheet } from "../contract.js";
import { sameName } from "./which.js";

const plain = (key: string): string => key.replaceAll(/[^\p{L}\p{N}]+/gu, "_");

export function withPictures(sheet: FreeSheet, { held }: BookContents): FreeSheet {
  if (sheet.pictures === undefined) return sheet;
  const own = held.filter((one) => sameName(one.sheet, sheet.name));
  const pictures = sheet.pictures.map((box) => {
    const found = own.find(({ key }) => sameName(plain(key), plain(box.key)));
    return found === undefined
      ? box
      : { ...box, base64: found.base64, shown: found.shown, orientation: found.orientation };
  });
  return { ...sheet, pictures };
}
