/** Cell styles of a described book, in the light tones: in the dark Univer turns lightness round, and show/tints.ts mends the fills. */
import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  type IStyleData,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import type { ColumnDescription } from "../../templates/contract.js";
import { lightTones as tones } from "../../host/tones.js";

const text = (rgb: string, size = 10): IStyleData => ({ ff: "Arial", fs: size, cl: { rgb }, vt: VerticalAlign.MIDDLE });
const bold = BooleanNumber.TRUE;
const padded: IStyleData = { pd: { l: 6, r: 6, t: 0, b: 0 } };

export const bookStyle: IStyleData = { ...text(tones.ink), bg: { rgb: tones.paper } };
const over: IStyleData = { ...padded, tb: WrapStrategy.OVERFLOW };
export const titleStyle: IStyleData = { ...text(tones.ink, 14), ...over, bl: bold };
export const headingStyle: IStyleData = { ...text(tones.muted), ...over };
export const groupStyle: IStyleData = { ...text(tones.accent, 9), ...over, bl: bold };
export const labelStyle: IStyleData = { ...text(tones.ink), ...padded };
export const subheadingStyle: IStyleData = { ...text(tones.accent, 11), ...over, bl: bold };
export const unitStyle: IStyleData = { ...text(tones.muted), ...padded };
export const noteStyle: IStyleData = { ...text(tones.muted), ...over };
export const lineStyle: IStyleData = { ...text(tones.ink), ...padded, tb: WrapStrategy.WRAP, vt: VerticalAlign.TOP };

/** The headings' type for a canvas: italic, the wider of the two; 9 pt are 12 px. */
export const headingFont = "italic 12px Arial";

export function headerStyle(column: ColumnDescription, computed: boolean): IStyleData {
  const line = { s: BorderStyleTypes.THIN, cl: { rgb: tones.line } };
  const accent = { s: BorderStyleTypes.MEDIUM, cl: { rgb: tones.accent } };
  return {
    ...text(tones.ink, 9),
    pd: { l: 6, r: 6, t: 0, b: 3 },
    bg: { rgb: computed ? tones.computed : tones.input },
    it: computed ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    tb: WrapStrategy.WRAP,
    vt: VerticalAlign.BOTTOM,
    ht: alignment(column),
    // What a person fills in: a thin accent line at the left of the column's header.
    bd: computed ? { b: line } : { b: line, l: accent },
  };
}

/** The head of a column on a free sheet. */
export function freeHeaderStyle(computed: boolean): IStyleData {
  return headerStyle({ key: "", header: "", group: "", width: 0 }, computed);
}

export function bodyStyle(column: ColumnDescription, computed: boolean): IStyleData {
  return {
    ...text(tones.ink),
    ...padded,
    bg: { rgb: computed ? tones.computed : tones.input },
    ht: alignment(column),
    tb: WrapStrategy.CLIP,
    ...(column.format === undefined ? {} : { n: { pattern: column.format } }),
  };
}

export function fieldStyle(format: string | undefined, computed: boolean, isNumber: boolean): IStyleData {
  return {
    ...text(tones.ink),
    ...padded,
    bg: { rgb: computed ? tones.computed : tones.input },
    ht: isNumber ? HorizontalAlign.RIGHT : HorizontalAlign.LEFT,
    tb: WrapStrategy.CLIP,
    ...(format === undefined ? {} : { n: { pattern: format } }),
  };
}

/** Numbers right, words left. */
function alignment(column: ColumnDescription): HorizontalAlign {
  const side = column.align ?? (column.format === undefined ? "left" : "right");
  return side === "right" ? HorizontalAlign.RIGHT : HorizontalAlign.LEFT;
}
