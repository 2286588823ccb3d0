/** What a worksheet part holds of its cells. */
import { decodeXstring } from "../xml/read.js";

/** A saved value as the file holds it. */
export type SavedValue = number | string | boolean | { readonly error: string } | null;

/** The element f of a cell. */
export interface FormulaElement {
  /** Without "="; "" for a follower of a shared formula. */
  readonly text: string;
  readonly kind: "normal" | "array" | "shared" | "dataTable";
  /** Range of an array or of a shared formula, as written. */
  readonly ref: string | undefined;
  readonly sharedIndex: string | undefined;
}

export interface FileCell {
  /** From 0. */
  readonly row: number;
  readonly column: number;
  readonly value: SavedValue;
  /** The attribute t as written; undefined where absent. */
  readonly type: string | undefined;
  readonly formula: FormulaElement | undefined;
  /** Index into the workbook's cell metadata: a dynamic array where it says so; 0 for none. */
  readonly cellMetadata: number;
  /** Index into value metadata: rich data; 0 for none. */
  readonly valueMetadata: number;
  /** The element c in the part's text, from "<" to after the last ">". */
  readonly start: number;
  readonly end: number;
}

/** The element row of a sheet in its part's text. */
export interface FileRow {
  readonly row: number;
  /** After the opening tag's ">". */
  readonly inside: number;
  /** Where the closing tag begins; for a self-closing row the place after "/>". */
  readonly close: number;
  readonly start: number;
  readonly isSelfClosing: boolean;
  readonly isHidden: boolean;
}

/** Takes the cells as they are met. */
export interface CellSink {
  readonly cell: (cell: FileCell) => void;
  /** All cells so far are void: they will be met again. */
  readonly reset: () => void;
}

export interface ScannedSheet {
  /** In the order of the part. */
  readonly rows: readonly FileRow[];
  /** Where the rows end: the closing tag of sheetData, or the tag itself where it closes itself; -1 for none. */
  readonly dataEnd: number;
  /** Prefix of the sheet's own elements with its colon, or "". */
  readonly prefix: string;
}

/** The value of a cell as it is written. */
export interface Written {
  readonly type: string | undefined;
  /** Contents of v. */
  readonly value: string | undefined;
  /** Text of is. */
  readonly inline: string | undefined;
  readonly formula: object | undefined;
}

/** The saved value by its type (ECMA-376, 18.18.11); null where none is saved. */
export function valueOf({ type, value, inline, formula }: Written, sharedStrings: readonly string[]): SavedValue {
  if (inline !== undefined && (type === "inlineStr" || value === undefined)) {
    // Under a formula an empty inline text is no result: one program saves it for what it did not work out.
    return inline === "" && formula ? null : decodeXstring(inline);
  }
  if (value === undefined) return null;
  switch (type) {
    case "s":
      return sharedStrings[Number(value)] ?? "";
    case "str":
    case "inlineStr":
      return decodeXstring(value);
    case "b":
      return value.trim() === "1" || value.trim() === "true";
    case "e":
      return { error: value.trim() };
    case "d":
      return decodeXstring(value.trim());
    case undefined:
    default: {
      const number = Number(value);
      return value.trim() === "" || Number.isNaN(number) ? null : number;
    }
  }
}
