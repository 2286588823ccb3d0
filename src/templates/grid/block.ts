/** The pasted readings, and the same corrected: a spill a band of rows. */
import type { FreeCell, FreeSheet } from "../contract.js";
import { at } from "../report/free.js";
import { READING } from "../route/ranges.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { call } from "./form.js";

/** Of the largest block: what Excel takes in seconds, and cameras have. */
export const MOST = { rows: 480, columns: 640 } as const;
/** Excel on the web caps a call of ours at 5 MB: 64 rows of 640 numbers are a fifth of that. */
const BAND_ROWS = 64;

export interface BlockSize {
  readonly rows: number;
  readonly columns: number;
}

/** A block as high as this and as wide as a camera's image of that height: four to three. */
export function sizeOf(rows: number): BlockSize {
  return { rows, columns: Math.round((rows * MOST.columns) / MOST.rows) };
}

export interface Band {
  readonly name: string;
  /** Rows of the block above it, and its own. */
  readonly above: number;
  readonly rows: number;
}

export function bandsOf({ rows }: BlockSize): Band[] {
  return Array.from({ length: Math.ceil(rows / BAND_ROWS) }, (_, at) => ({
    name: `grid_band_${at + 1}`,
    above: at * BAND_ROWS,
    rows: Math.min(BAND_ROWS, rows - at * BAND_ROWS),
  }));
}

const NUMBER_WIDTH = 40;
const CELL_WIDTH = 44;

/** Rows and columns are numbered beside the block, since boxes are told by them. */
function frame({ rows, columns }: BlockSize, columnsName?: string): FreeCell[] {
  const rest = { format: "0", align: "right" } as const;
  const named = columnsName === undefined ? {} : { name: columnsName };
  return [
    at(0, 1, `=SEQUENCE(1,${columns})`, "header", { size: { rows: 1, columns }, ...rest, ...named }),
    at(1, 0, `=SEQUENCE(${rows})`, "header", { size: { rows, columns: 1 }, ...rest }),
  ];
}

/** Numbers of the columns: on a sheet that is narrower than the block the page's SEQUENCE does not reach so far. */
export const COLUMN_NUMBERS = "grid_column_numbers";

function sheet(name: string, heading: readonly string[], size: BlockSize, cells: readonly FreeCell[]): FreeSheet {
  return {
    kind: "free",
    name,
    heading,
    widths: [NUMBER_WIDTH, ...Array.from({ length: size.columns }, () => CELL_WIDTH)],
    cells,
    frozen: { rows: 1, columns: 1 },
    print: { landscape: true },
  };
}

/** @param fill a formula that draws the readings of a demo; nothing where absent */
export function readingsSheet(
  heading: readonly string[],
  size: BlockSize,
  units: SheetUnits,
  fill: string | undefined,
): FreeSheet {
  const block = at(1, 1, fill, "typed", {
    size,
    name: "grid_readings",
    label: "A reading",
    unit: units.label("temperature"),
    range: units.range(READING, "temperature"),
    format: "0.0",
    align: "right",
  });
  return sheet("Readings", heading, size, [...frame(size, COLUMN_NUMBERS), block]);
}

export function correctedSheet(heading: readonly string[], size: BlockSize, units: SheetUnits): FreeSheet {
  const spills = bandsOf(size).map(({ name, above, rows }) =>
    at(1 + above, 1, corrected(above, rows, units), "computed", {
      size: { rows, columns: size.columns },
      name,
      format: "0.0",
      align: "right",
    }),
  );
  return sheet("Corrected", heading, size, [...frame(size), ...spills]);
}

/** Empty cells stay empty, and so does what is no number or has no answer: how many, the sheet Boxes tells. */
function corrected(above: number, rows: number, units: SheetUnits): string {
  const numbers = "SEQUENCE(ROWS(grid_readings))";
  return (
    `=IF(grid_needs<>"","",LET(part,FILTER(grid_readings,(${numbers}>${above})*(${numbers}<=${above + rows})),` +
    `IF(COUNT(part)=0,"",IF(ISNUMBER(part),IFERROR(${call("CORRECTED", "part", units)},""),""))))`
  );
}
