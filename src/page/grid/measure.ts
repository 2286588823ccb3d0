/** Measures text as the grid will paint it. */
import type { Measure } from "../book/header.js";
import { headingFont } from "../book/styles.js";

export function measureHeadings(): Measure {
  const context = document.createElement("canvas").getContext("2d");
  if (context === null) throw new Error("This browser cannot draw the grid.");
  context.font = headingFont;
  return (text) => context.measureText(text).width;
}
