import { decodeXstring, localName, readXml } from "../xml/read.js";

/** The strings of a workbook's shared table, in order, runs joined, reading aids left out. */
export function readSharedStrings(part: string, text: string): string[] {
  const strings: string[] = [];
  let item: string | undefined;
  let phonetic = 0;
  let inText = false;
  readXml(part, text, {
    open: (tag) => {
      const local = localName(tag.name);
      if (local === "si") item = "";
      else if (local === "rPh") phonetic++;
      else if (local === "t") inText = item !== undefined && phonetic === 0;
    },
    text: (piece) => {
      if (inText) item += piece;
    },
    close: (name) => {
      const local = localName(name);
      if (local === "t") inText = false;
      else if (local === "rPh") phonetic--;
      else if (local === "si") {
        strings.push(decodeXstring(item ?? ""));
        item = undefined;
      }
    },
  });
  return strings;
}
