import { columnIndex } from "../reference.js";

/** Cells as Excel names them: "Route!B14", "'My sheet'!B14". Row and column are counted from 0. */
export interface CellAddress {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** The first cell of an address, or undefined where it is none. A workbook's name before the sheet's is left out. */
export function parseAddress(address: string): CellAddress | undefined {
  const found = /^(?:(.*)!)?\$?([A-Z]{1,3})\$?(\d+)(?::[^!]*)?$/i.exec(address);
  const [, sheet = "", letters, digits] = found ?? [];
  if (letters === undefined || digits === undefined) return undefined;
  const quoted = /^'(.*)'$/.exec(sheet)?.[1];
  const name = (quoted?.replaceAll("''", "'") ?? sheet).replace(/^\[[^\]]*\]/, "");
  return { sheet: name, row: Number(digits) - 1, column: columnIndex(letters) };
}

/** "B14". */
export function localAddress({ row, column }: Omit<CellAddress, "sheet">): string {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return `${letters}${row + 1}`;
}
