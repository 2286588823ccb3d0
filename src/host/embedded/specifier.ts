/** The rows that a structured reference can name. */
export type RowItem = "all" | "data" | "headers" | "totals" | "this row";

/** What stands in the brackets of a structured reference. */
export interface Specifier {
  readonly items: readonly RowItem[];
  /** First and last column; none: every column of the table. */
  readonly from?: string;
  readonly to?: string;
}

const ITEMS: ReadonlyMap<string, RowItem> = new Map([
  ["#all", "all"],
  ["#data", "data"],
  ["#headers", "headers"],
  ["#totals", "totals"],
  ["#this row", "this row"],
]);

/** One part in brackets, with the character before it that joins it to the last one. */
const PART = /\s*([,:]?)\s*\[((?:'[\s\S]|[^[\]'])*)\]/y;

/** Reads a bracketed specifier, outer brackets included, or undefined where it makes no sense. */
export function parseSpecifier(bracket: string): Specifier | undefined {
  const inner = bracket.slice(1, -1).trim();
  if (inner === "") return { items: [] };
  if (inner.startsWith("@")) {
    const rest = inner.slice(1).trim();
    const columns = rest.startsWith("[")
      ? parseParts(rest)
      : rest === ""
        ? { items: [] }
        : { items: [], from: unescape(rest) };
    return columns?.items.length === 0 ? { ...columns, items: ["this row"] } : undefined;
  }
  if (inner.startsWith("[")) return parseParts(inner);
  const item = ITEMS.get(inner.toLowerCase());
  if (item !== undefined) return { items: [item] };
  return inner.startsWith("#") ? undefined : { items: [], from: unescape(inner) };
}

/** [#Headers],[#Data],[A]:[B] */
function parseParts(inner: string): Specifier | undefined {
  const items: RowItem[] = [];
  const columns: string[] = [];
  PART.lastIndex = 0;
  for (let at = 0; at < inner.length; at = PART.lastIndex) {
    const part = PART.exec(inner);
    if (part === null) return undefined;
    const [, joint = "", raw = ""] = part;
    const item = ITEMS.get(raw.trim().toLowerCase());
    const isFirst = at === 0;
    if (isFirst !== (joint === "")) return undefined;
    if (item !== undefined && joint !== ":" && columns.length === 0) items.push(item);
    else if (item === undefined && (joint === ":" ? columns.length === 1 : columns.length === 0))
      columns.push(unescape(raw));
    else return undefined;
  }
  const [from, to] = columns;
  return { items, ...(from !== undefined ? { from } : {}), ...(to !== undefined ? { to } : {}) };
}

function unescape(name: string): string {
  return name.replace(/'([\s\S])/g, "$1");
}
