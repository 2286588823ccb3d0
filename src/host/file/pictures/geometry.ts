/** How large a box of cells is, in pixels at 96 dots an inch, as a sheet's part says it. */
import type { BoxPlace } from "../../picture-boxes.js";
import { attribute, isTrue, localName, readXml } from "../xml/read.js";

/** Pixels of a digit in Arial 10, which our workbooks have, as in Excel's own first font: what a column's width counts. */
const DIGIT = 7;
const PIXELS_A_POINT = 4 / 3;
const DEFAULT = { width: 64, height: 20 } as const;

interface Columns {
  readonly from: number;
  readonly to: number;
  readonly width: number;
}

export class SheetGeometry {
  private readonly columns: Columns[] = [];
  private readonly heights = new Map<number, number>();
  private width: number = DEFAULT.width;
  private height: number = DEFAULT.height;

  constructor(part: string, text: string) {
    let next = 0;
    readXml(part, text, {
      open: (tag) => {
        const pixels = (name: string, unit: number): number | undefined => {
          const given = attribute(tag, name);
          return given === undefined ? undefined : Math.round(Number(given) * unit);
        };
        const local = localName(tag.name);
        const isHidden = isTrue(attribute(tag, "hidden"));
        if (local === "sheetFormatPr") {
          this.width = pixels("defaultColWidth", DIGIT) ?? this.width;
          this.height = pixels("defaultRowHeight", PIXELS_A_POINT) ?? this.height;
        } else if (local === "col") {
          const width = isHidden ? 0 : (pixels("width", DIGIT) ?? this.width);
          this.columns.push({ from: Number(attribute(tag, "min")) - 1, to: Number(attribute(tag, "max")) - 1, width });
        } else if (local === "row") {
          const row = Number(attribute(tag, "r") ?? next + 1) - 1;
          next = row + 1;
          const height = isHidden ? 0 : pixels("ht", PIXELS_A_POINT);
          if (height !== undefined) this.heights.set(row, height);
        }
      },
    });
  }

  size({ startRow, endRow, startColumn, endColumn }: BoxPlace["area"]): { width: number; height: number } {
    let [width, height] = [0, 0];
    for (let column = startColumn; column <= endColumn; column++)
      width += this.columns.find(({ from, to }) => column >= from && column <= to)?.width ?? this.width;
    for (let row = startRow; row <= endRow; row++) height += this.heights.get(row) ?? this.height;
    return { width, height };
  }
}
