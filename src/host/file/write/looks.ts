/** How a written workbook looks: the page's light tones, in what Excel calls formats. */
import type { ColumnDescription } from "../../../templates/contract.js";
import { gradeBars, lightTones } from "../../tones.js";
import type { CellStyle, Conditional } from "./model.js";

export const looks = {
  ...lightTones,
  /** Between cells. */
  hairline: "#e9e5da",
} as const;

const between = { weight: "thin", colour: looks.hairline } as const;
const cellBorder = { left: between, right: between, bottom: between } as const;

const text: CellStyle = { colour: looks.ink, vertical: "center" };

export const ordinary: CellStyle = { colour: looks.ink };
export const title: CellStyle = { ...text, size: 14, bold: true };
export const heading: CellStyle = { ...text, colour: looks.muted };
export const group: CellStyle = { ...text, colour: looks.accent, size: 9, bold: true };
export const label: CellStyle = { ...text, align: "left", indent: 1 };
export const subheading: CellStyle = { ...text, colour: looks.accent, size: 11, bold: true };
export const strong: CellStyle = { ...text, bold: true, align: "left", indent: 1, wrap: true };
export const muted: CellStyle = { ...text, colour: looks.muted, align: "left", indent: 1 };
export const line: CellStyle = { ...text, vertical: "top", wrap: true };

/** Numbers right, words left. */
export function side(column: ColumnDescription): "left" | "right" {
  return column.align ?? (column.format === undefined ? "left" : "right");
}

function aligned(column: ColumnDescription): Pick<CellStyle, "align" | "indent"> {
  return side(column) === "right" ? { align: "right" } : { align: "left", indent: 1 };
}

export function unit(column: ColumnDescription): CellStyle {
  return { ...text, colour: looks.muted, size: 9, ...aligned(column) };
}

/** What a person fills in has an accent line at its left, what is worked out "=" before its name: the text itself has none. */
export function header(column: ColumnDescription, computed: boolean): CellStyle {
  const under = { weight: "thin", colour: looks.line } as const;
  return {
    ...text,
    size: 9,
    fill: computed ? looks.computed : looks.input,
    vertical: "bottom",
    wrap: true,
    ...aligned(column),
    ...(computed
      ? { italic: true, format: '"= "@', border: { ...cellBorder, bottom: under } }
      : { border: { ...cellBorder, left: { weight: "medium", colour: looks.accent }, bottom: under } }),
  };
}

export function body(column: ColumnDescription, computed: boolean): CellStyle {
  return {
    ...text,
    fill: computed ? looks.computed : looks.input,
    ...aligned(column),
    border: cellBorder,
    // A typed text is read to its end, on paper too; what spills does not make its row higher.
    ...(computed ? {} : { unlocked: true, ...(column.format === undefined ? { wrap: true } : {}) }),
    ...(column.format === undefined ? {} : { format: column.format }),
  };
}

/** Of cells of a column beyond what is written: as its body, without its fill. */
export function beyond(column: ColumnDescription, computed: boolean): CellStyle {
  return {
    ...text,
    ...aligned(column),
    ...(column.format === undefined ? {} : { format: column.format }),
    ...(computed ? {} : { unlocked: true }),
  };
}

export function field(format: string | undefined, computed: boolean, isNumber: boolean): CellStyle {
  return {
    ...text,
    fill: computed ? looks.computed : looks.input,
    ...(isNumber ? { align: "right" } : { align: "left", indent: 1, wrap: true }),
    border: cellBorder,
    ...(computed ? {} : { unlocked: true }),
    ...(format === undefined ? {} : { format }),
  };
}

/** The looks of grades 0 to 4: bars, then a fill; the cell's own words say the number. */
export const gradeLooks: readonly Conditional["look"][] = gradeBars.map((bar, grade) => {
  const format = `"${bar} "General;"${bar} "General;"${bar} "General;"${bar} "@`;
  const tone = looks.grades[grade - 1];
  return tone === undefined ? { format } : { format, fill: tone.fill, colour: tone.ink };
});

/** The head of a column that stands on a free sheet. */
export function freeHeader(computed: boolean): CellStyle {
  return header({ key: "", header: "", group: "", width: 0 }, computed);
}

/** A place that a picture will be put into: a light field in a thin frame. */
export function pictureField(edges: Readonly<Record<"top" | "bottom" | "left" | "right", boolean>>): CellStyle {
  const edge = { weight: "thin", colour: looks.line } as const;
  const sides = (["top", "bottom", "left", "right"] as const).filter((side) => edges[side]);
  return { ...text, fill: looks.paper, border: Object.fromEntries(sides.map((side) => [side, edge])) };
}
