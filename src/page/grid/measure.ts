/** Measures text as the grid will paint it. */
import type { Measure } from "../book/header.js";
import { headingFont } from "../book/styles.js";

export function measureHeadings(): Measure {
  return measured(headingFont);
}

const known = new Map<string, Measure>();

/** The type of a cell: its size in points. */
export function measureCells(size: number, bold: boolean): Measure {
  const font = `${bold ? "bold " : ""}${String(size)}pt Arial`;
  const measure = known.get(font) ?? measured(font);
  known.set(font, measure);
  return measure;
}

function measured(font: string): Measure {
  const context = document.createElement("canvas").getContext("2d");
  if (context === null) throw new Error("This browser cannot draw the grid.");
  context.font = font;
  return (text) => context.measureText(text).width;
}
