import type { CellReport } from "../host/file/recalc/changes.js";
import type { SavedValue } from "../host/file/sheet/cells.js";

/** What came of one file, counted. */
export interface Summary {
  readonly formulas: number;
  readonly same: number;
  readonly changed: number;
  readonly kept: number;
}

/** What a person reads at the end of a file: the counts, and why what was kept was kept. */
export function summaryLine(file: string, summary: Summary, outcome: string): string {
  const { formulas, same, changed, kept } = summary;
  const counted = `${counts(formulas, "formula")}, ${counts(same + changed + kept, "cell")}: ${whole(same)} as saved, ${whole(changed)} different, ${whole(kept)} kept`;
  return printable(`${file}: ${counted}; ${outcome}`);
}

const MOST_REASONS = 5;

/** Why cells were kept, most frequent first; for those that only depend on one, one line together. */
export function keptLines(cells: readonly CellReport[]): string[] {
  const reasons = new Map<string, { count: number; first: string }>();
  for (const { status, reason = "", sheet, cell } of cells) {
    if (status !== "kept") continue;
    const key = reason.startsWith("it depends on ") ? "it depends on a cell that is kept" : reason;
    const known = reasons.get(key);
    if (known) known.count++;
    else reasons.set(key, { count: 1, first: address(sheet, cell) });
  }
  const sorted = [...reasons].sort(([, a], [, b]) => b.count - a.count);
  const lines = sorted
    .slice(0, MOST_REASONS)
    .map(([reason, { count, first }]) =>
      printable(`  kept ${whole(count)} (${count > 1 ? "first " : ""}${first}): ${reason}`),
    );
  const rest = sorted.length - MOST_REASONS;
  return rest > 0 ? [...lines, `  and ${counts(rest, "other reason")}`] : lines;
}

/** One differing cell in a line. */
export function differenceLine({ sheet, cell, stored, recalculated, difference, formula, reason }: CellReport): string {
  const apart = difference === null ? "" : `  difference ${shown(difference)}`;
  const why = reason === undefined ? "" : `  (${reason})`;
  return printable(
    `  ${address(sheet, cell)}  stored ${shown(stored)}  recalculated ${shown(recalculated)}${apart}  =${formula}${why}`,
  );
}

const whole = (count: number): string => count.toLocaleString("en-GB");
const counts = (count: number, word: string): string => `${whole(count)} ${word}${count === 1 ? "" : "s"}`;
const address = (sheet: string, cell: string): string =>
  /^[A-Za-z_][\w.]*$/.test(sheet) ? `${sheet}!${cell}` : `'${sheet.replaceAll("'", "''")}'!${cell}`;

function shown(value: SavedValue): string {
  if (value === null) return "nothing";
  if (typeof value === "string") return JSON.stringify(value);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return typeof value === "number" ? String(value) : value.error;
}

/** On one line, and without what a terminal would obey: texts and names come from strangers' files. */
export function printable(text: string): string {
  return text.replaceAll(/[\u0000-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]+/g, " ");
}
