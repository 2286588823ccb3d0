/** Recalculates a workbook's bytes: only saved values change, every other byte of every other part stays. */
import type { FunctionSpec } from "../../../functions/contract.js";
import { patchSheet } from "../sheet/patch.js";
import type { Patch } from "../sheet/patch.js";
import { scanSheet } from "../sheet/scan.js";
import { TEMPLATE_MARK } from "../write/marks.js";
import { decodeXml } from "../xml/read.js";
import type { Codec } from "../zip/codec.js";
import { changesOf, DEFAULT_TOLERANCE } from "./changes.js";
import type { CellReport, CellStatus, Changes } from "./changes.js";
import { emptyReader } from "./changes-empty.js";
import { loadBook } from "./load.js";
import type { LoadedBook, LoadedSheet } from "./load.js";
import type { Clock } from "./nodes-clock.js";
import { recalculate } from "./recalculate.js";
import type { Outcome } from "./recalculate.js";

export interface FileRecalculation {
  /** The workbook with new saved values; the very bytes that came in where nothing changes. */
  readonly bytes: Uint8Array;
  /** The cells that were asked for. */
  readonly cells: readonly CellReport[];
  readonly counts: Changes["counts"];
  /** Formulas that were to be worked out. */
  readonly formulas: number;
}

export interface FileOptions {
  /** Every formula; where nothing is said those of a workbook of ours, whose look-ups have no value before. */
  readonly all?: boolean | undefined;
  /** What NOW and TODAY are; without it they keep what is saved. */
  readonly clock?: Clock | undefined;
  /** Relative difference up to which a stored number is right. */
  readonly tolerance?: number | undefined;
  readonly onProgress?: ((done: number, of: number) => void) | undefined;
  /** Which cells are told; all where nothing is said. */
  readonly isListed?: ((status: CellStatus) => boolean) | undefined;
  /** Only compares: the bytes that come back are those that came in. */
  readonly isCheck?: boolean | undefined;
  /** A host's own way to pack and unpack, where it has a quicker one. */
  readonly codec?: Codec | undefined;
}

/** @throws FileRefused where the file is not one that may be read */
export async function recalculateFile(
  bytes: Uint8Array,
  specs: readonly FunctionSpec[],
  options: FileOptions = {},
): Promise<FileRecalculation> {
  const { tolerance = DEFAULT_TOLERANCE, isListed = () => true, isCheck = false } = options;
  const book = loadBook(bytes, options.codec);
  const { all = isOfTemplate(book), onProgress, clock } = options;
  const { outcomes, magnitudeOf, valueAt } = await recalculate(book, specs, {
    all,
    clock,
    ...(onProgress ? { onProgress } : {}),
  });
  const { cells, counts, patches } = changesOf(book, outcomes, {
    tolerance,
    magnitudeOf,
    isListed,
    readsEmpty: emptyReader(book, specs, valueAt),
  });
  const fresh = isCheck || patches.size === 0 ? bytes : written(book, patches);
  return { bytes: fresh, cells, counts, formulas: countOf(outcomes) };
}

const isOfTemplate = ({ facts }: LoadedBook): boolean =>
  facts.definedNames.some(({ name }) => name.toUpperCase() === TEMPLATE_MARK);

const countOf = (outcomes: readonly Outcome[]): number =>
  outcomes.reduce((sum, { node }) => sum + (node.run?.cells.length ?? 1), 0);

function written(book: LoadedBook, patches: Changes["patches"]): Uint8Array {
  const changed = new Map<string, Uint8Array>();
  for (const [index, own] of patches) {
    const sheet = book.sheets[index]!;
    changed.set(sheet.part, patchedPart(book, sheet, own));
  }
  return book.pack.write(changed);
}

function patchedPart({ pack }: LoadedBook, sheet: LoadedSheet, patches: readonly Patch[]): Uint8Array {
  const { part, cells, prefix } = sheet;
  const { text } = decodeXml(part, pack.bytes(part));
  // Where rows stand is not kept in memory, since only results that grow have to know.
  const places = patches.some(({ cell }) => cell === undefined)
    ? scanSheet(part, text, [], { cell: () => undefined, reset: () => undefined })
    : { rows: [], dataEnd: -1 };
  return encoded(patchSheet({ text, ...places, prefix, cellsOf: cells.inRow }, patches), pack.size(part));
}

/** Pieces shorter than this are put together before they are encoded. */
const SHORT = 1 << 15;

/** @param guess bytes that they will hardly be more than */
function encoded(pieces: readonly string[], guess: number): Uint8Array {
  const encoder = new TextEncoder();
  let bytes = new Uint8Array(guess + (guess >> 3) + SHORT);
  let length = 0;
  const put = (text: string): void => {
    for (let at = 0; at < text.length;) {
      // A character takes four bytes at most.
      if (bytes.length - length < 4) {
        const longer = new Uint8Array(bytes.length * 2);
        longer.set(bytes);
        bytes = longer;
      }
      const { read, written } = encoder.encodeInto(at === 0 ? text : text.slice(at), bytes.subarray(length));
      at += read;
      length += written;
    }
  };
  let short = "";
  for (const piece of pieces) {
    if (piece.length < SHORT) short += piece;
    if (short.length < SHORT && piece.length < SHORT) continue;
    put(short);
    short = "";
    if (piece.length >= SHORT) put(piece);
  }
  put(short);
  return bytes.subarray(0, length);
}
