import { GreybodyError } from "../core/errors.js";
import type { Band } from "../core/planck/band.js";
import { DEFAULT_BAND, flatBand, responseBand } from "../core/planck/band.js";
import type { ArgumentSpec, Cell, CellError, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { errorCell } from "./messages.js";
import { plainNumber } from "./numbers.js";
import type { Column } from "./read.js";
import { gridOf, isBlank, isNoWord } from "./read.js";
import { tableError } from "./table-errors.js";
import { unitOf } from "./units.js";

export const BAND_ARGUMENT: ArgumentSpec = {
  name: "band",
  quantity: "band",
  help: 'the camera\'s spectral band as text "a-b" in µm, or a range wavelength | response',
  optional: true,
  default: "7.5-14",
};

/** One band for all cells or one a cell. */
export type BandColumn = Column<readonly (Band | undefined)[]>;

const NUMBER = String.raw`(\d+(?:[.,]\d+)?)`;
const BAND_TEXT = new RegExp(String.raw`^\s*${NUMBER}\s*(?:µm|μm|um)?\s*[-–—−]\s*${NUMBER}\s*(?:µm|μm|um)?\s*$`, "i");

const invalid = (given: string, key: string): GreybodyError =>
  new GreybodyError({ code: "INVALID", argument: "band", given, hint: { key } });

/** A band from text such as "7.5-14", "7,5-14", "3–5 µm". @throws INVALID "band" */
function parseBand(text: string): Band {
  const match = BAND_TEXT.exec(text);
  if (!match) throw invalid(text, "band-wavelengths");
  const [from = NaN, to = NaN] = match.slice(1).map((part) => Number(part.replace(",", ".")));
  return flatBand(from, to);
}

const UNIT = unitOf("band", "C");

function readBand(cell: Cell): Band | CellError {
  if (isCellError(cell)) return cell;
  if (isNoWord(cell)) return DEFAULT_BAND;
  try {
    if (typeof cell === "string") return parseBand(cell);
    // "3-5" typed into a cell becomes the fifth of March: a whole number of days since 1900.
    throw invalid(
      String(cell),
      typeof cell === "number" && Number.isInteger(cell) && cell > 1000 ? "band-date" : "band-wavelengths",
    );
  } catch (error) {
    if (error instanceof GreybodyError) return errorCell(error, BAND_ARGUMENT, cell, UNIT);
    throw error;
  }
}

const asNumber = (cell: Cell | undefined): number | undefined =>
  typeof cell === "number" ? cell : typeof cell === "string" ? plainNumber(cell) : undefined;

/**
 * A two-column range of numbers is one response table; a heading above it and empty rows are passed over, below it also
 * those that Excel hands over as zeros.
 */
function readResponse(input: Input): Band | CellError | undefined {
  const grid = gridOf(input);
  if (grid.length < 2 || grid[0]?.length !== 2) return undefined;
  const isHeading = (cell: Cell): boolean => asNumber(cell) === undefined && !isCellError(cell);
  const isFilled = (row: readonly Cell[]): boolean => !row.every(isBlank);
  const isNonZero = (row: readonly Cell[]): boolean => !row.every(isNoWord);
  const end = grid.reduce((last, row, place) => (isNonZero(row) ? place + 1 : last), 0);
  const filled = grid.slice(0, end).flatMap((row, place) => (isFilled(row) ? [place] : []));
  const places = filled.filter((place, i) => i > 0 || !grid[place]!.every(isHeading));
  const rows = places.map((place) => grid[place]!);
  // Without a number it is no response table but bands, one a cell, each with its own error if need be.
  if (!rows.some((row) => asNumber(row[0]) !== undefined)) return undefined;
  const incoming = rows.flat().find(isCellError);
  if (incoming) return incoming;
  const column = (at: number): number[] => rows.map((row) => asNumber(row[at]) ?? NaN);
  try {
    return responseBand(column(0), column(1));
  } catch (error) {
    if (!(error instanceof GreybodyError)) throw error;
    const isResponse = (key: string): boolean => key === "band-response";
    return tableError(error, BAND_ARGUMENT, grid, places, (key) => ({ column: isResponse(key) ? 1 : 0, unit: UNIT }));
  }
}

/** Reads the argument `band`: text, a column of texts, or a response table taken whole. */
export function readBands(input: Input): BandColumn {
  const response = readResponse(input);
  const grid = response === undefined ? gridOf(input) : [[null]];
  let faults: Map<number, CellError> | undefined;
  const cache = new Map<Cell, Band | CellError>();
  const values = grid.flat().map((cell, k) => {
    let band = response ?? cache.get(cell);
    if (band === undefined) cache.set(cell, (band = readBand(cell)));
    if (!isCellError(band)) return band;
    (faults ??= new Map<number, CellError>()).set(k, band);
    return undefined;
  });
  return { rows: grid.length, columns: grid[0]?.length ?? 0, values, faults };
}
