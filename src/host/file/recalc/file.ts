/** Recalculates a workbook's bytes: only saved values change, every other byte of every other part stays. */
import type { FunctionSpec } from "../../../functions/contract.js";
import { patchSheet } from "../sheet/patch.js";
import type { Patch } from "../sheet/patch.js";
import { scanSheet } from "../sheet/scan.js";
import { decodeXml } from "../xml/read.js";
import { changesOf, DEFAULT_TOLERANCE } from "./changes.js";
import type { CellReport, Changes } from "./changes.js";
import { loadBook } from "./load.js";
import type { LoadedBook, LoadedSheet } from "./load.js";
import { recalculate } from "./recalculate.js";
import type { Outcome } from "./recalculate.js";

export interface FileRecalculation {
  /** The workbook with new saved values; the very bytes that came in where nothing changes. */
  readonly bytes: Uint8Array;
  readonly cells: readonly CellReport[];
  /** Formulas that were to be worked out. */
  readonly formulas: number;
}

export interface FileOptions {
  readonly all?: boolean | undefined;
  /** Relative difference up to which a stored number is right. */
  readonly tolerance?: number | undefined;
  readonly onProgress?: (done: number, of: number) => void;
}

/** @throws FileRefused where the file is not one that may be read */
export async function recalculateFile(
  bytes: Uint8Array,
  specs: readonly FunctionSpec[],
  { all = false, tolerance = DEFAULT_TOLERANCE, onProgress }: FileOptions = {},
): Promise<FileRecalculation> {
  const book = loadBook(bytes);
  const { outcomes, magnitudeOf } = await recalculate(book, specs, { all, ...(onProgress ? { onProgress } : {}) });
  const changes = changesOf(book, outcomes, tolerance, magnitudeOf);
  return { bytes: written(bytes, book, changes), cells: changes.cells, formulas: countOf(outcomes) };
}

const countOf = (outcomes: readonly Outcome[]): number =>
  outcomes.reduce((sum, { node }) => sum + (node.run?.cells.length ?? 1), 0);

function written(bytes: Uint8Array, book: LoadedBook, { patches }: Changes): Uint8Array {
  if (patches.size === 0) return bytes;
  const changed = new Map<string, Uint8Array>();
  for (const [index, own] of patches)
    changed.set(book.sheets[index]!.part, patchedPart(book, book.sheets[index]!, own));
  return book.pack.write(changed);
}

function patchedPart({ pack }: LoadedBook, { part, cells }: LoadedSheet, patches: readonly Patch[]): Uint8Array {
  const { text } = decodeXml(part, pack.bytes(part));
  // Where rows stand is not kept in memory, since few recalculations have to know.
  const places = scanSheet(part, text, [], { cell: () => undefined, reset: () => undefined });
  return new TextEncoder().encode(patchSheet({ text, ...places, cellsOf: cells.inRow }, patches));
}
