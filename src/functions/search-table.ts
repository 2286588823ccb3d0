import type { ArgumentSpec, Cell, CellError, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { nearestByWord } from "../core/nearest.js";
import { textOf } from "./own-table.js";
import { isNoWord, readSingle } from "./read.js";

/** A row of a table that is searched, by what it is called and what else it is found by. */
export interface SearchRow {
  readonly name: string;
  readonly found: string;
  readonly cells: readonly Cell[];
}

export const searchArgument = (what: string): ArgumentSpec => ({
  name: "search",
  quantity: "text",
  help: `words that ${what} has, in any order; the whole table where left out`,
  optional: true,
});

/** The header and every row in which all words asked for stand; #N/A with what is near where none has them. */
export function searchTable(
  spec: ArgumentSpec,
  input: Input,
  header: readonly string[],
  rows: readonly SearchRow[],
): Grid | CellError {
  const given = readSingle(spec, input);
  if (isCellError(given)) return given;
  if (isNoWord(given)) return [header, ...rows.map(({ cells }) => cells)];
  const asked = textOf(given).trim();
  const words = asked.toLowerCase().split(/\s+/);
  const hits = rows.filter(({ name, found }) => {
    const text = `${name} ${found}`.toLowerCase();
    return words.every((word) => text.includes(word));
  });
  if (hits.length > 0) return [header, ...hits.map(({ cells }) => cells)];
  const near = nearestByWord(
    asked,
    rows.map(({ name }) => name),
  );
  const advice = near.length > 0 ? `Near it: ${near.join("; ")}.` : "Without a search the whole table is shown.";
  return { error: "#N/A", message: `search: nothing has "${asked}". ${advice}` };
}
