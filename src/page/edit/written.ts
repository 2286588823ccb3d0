/** Which cells a set-range-values command gives content to (a change of looks alone is none). */
import type { Box } from "../book/a1.js";

interface WriteParams {
  readonly range?: Box;
  readonly value?: unknown;
}

const hasContent = (cell: unknown): boolean =>
  typeof cell === "object" && cell !== null && ("v" in cell || "f" in cell || "p" in cell || "si" in cell);

export function writtenBox({ range, value }: WriteParams): Box | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  if (Array.isArray(value)) return value.flat().some(hasContent) ? range : undefined;
  if (hasContent(value)) return range;
  const rows: number[] = [];
  const columns: number[] = [];
  for (const [row, cells] of Object.entries(value)) {
    for (const [column, cell] of Object.entries((cells ?? {}) as Record<string, unknown>)) {
      if (!hasContent(cell)) continue;
      rows.push(Number(row));
      columns.push(Number(column));
    }
  }
  if (rows.length === 0) return undefined;
  return {
    startRow: Math.min(...rows),
    endRow: Math.max(...rows),
    startColumn: Math.min(...columns),
    endColumn: Math.max(...columns),
  };
}
