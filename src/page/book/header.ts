/** Column headings: where they break into lines, how wide a column must be for them, how high their row. */
import type { ColumnPlace } from "./layout.js";

/** Width in pixels of a text in the headings' type. */
export type Measure = (text: string) => number;

const padding = 14;
/** What the grid keeps free for the button that sorts and filters. */
const buttonWidth = 18;
const lineHeight = 15;

export interface Heading {
  readonly text: string;
  readonly width: number;
  readonly lines: number;
}

/** The name ("=" before it where the sheet works it out), broken only between words or after an underscore, and the unit. */
export function heading({ column, computed }: ColumnPlace, measure: Measure): Heading {
  const beside = padding + (computed === undefined ? buttonWidth : 0);
  const [first = "", ...rest] = column.header.split(/(?<=_)|(?<= )/);
  // The "=" never stands alone.
  const parts = [computed === undefined ? first : `= ${first}`, ...rest];
  const unit = column.unit === undefined ? [] : [column.unit];
  const longest = Math.max(...[...parts, ...unit].map((part) => measure(part.trimEnd())));
  // A grade has its bars before the words.
  const given = column.width + (computed?.grade === true ? 22 : 0);
  const width = Math.max(given, Math.ceil(longest) + beside);
  const lines = [...wrapped(parts, width - beside, measure), ...unit];
  return { text: lines.join("\n"), width, lines: lines.length };
}

export function headerHeight(headings: readonly Heading[]): number {
  return 12 + lineHeight * Math.max(2, ...headings.map(({ lines }) => lines));
}

function wrapped(parts: readonly string[], width: number, measure: Measure): string[] {
  const lines: string[] = [];
  let line = "";
  for (const part of parts) {
    if (line !== "" && measure((line + part).trimEnd()) > width) {
      lines.push(line.trimEnd());
      line = "";
    }
    line += part;
  }
  return [...lines, line.trimEnd()];
}
