/** A page an exception: its pictures, its numbers with their uncertainty, what was used, what speaks against it, what is done. */
import type { FreeCell, FreeSheet, PictureBox } from "../contract.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { at } from "./free.js";
import { heading, type ReportHead } from "./head.js";
import type { ReportKind } from "./kind.js";
import { pageWords } from "./page-words.js";

/** Label, three readings, gap, then two pictures of two columns each. */
const WIDTHS = [124, 112, 112, 112, 12, 92, 132, 92, 132] as const;
const LAST = WIDTHS.length - 1;
const RIGHT = 5;
/** Rows of a page: title, grade, judged by, heads, then readings and facts. */
const READ = 4;
const LINE = 21;
const MOST = 200;
const LEAST = 10;

/** More than a fifth of the rows are seldom exceptions, and each page takes its place in the file. */
export function pagesFor(rows: number): number {
  return Math.min(MOST, Math.max(LEAST, Math.ceil(rows / 5)));
}

export function pagesSheet(kind: ReportKind, head: ReportHead, units: SheetUnits, pages: number): FreeSheet {
  const page = pageOf(kind, units);
  const numbers = Array.from({ length: pages }, (_, i) => i + 1);
  const top = (n: number): number => (n - 1) * page.rows;
  return {
    kind: "free",
    name: "Exception pages",
    heading: heading("Exceptions", head),
    widths: WIDTHS,
    heights: Object.fromEntries(numbers.flatMap((n) => page.heights.map((height, row) => [top(n) + row, height]))),
    cells: [
      ...numbers.flatMap((n) => page.cells(n, top(n))),
      at(0, WIDTHS.length + 1, `=MIN(exception_count,${pages})*${page.rows}`, "muted", {
        name: "exception_page_rows",
        format: ";;;",
      }),
    ],
    pictures: numbers.flatMap((n) => page.pictures(n, top(n))),
    print: {
      landscape: true,
      repeatHeading: true,
      breaksBefore: numbers.slice(1).map(top),
      rowsNamed: "exception_page_rows",
    },
  };
}

interface Page {
  readonly rows: number;
  readonly heights: readonly number[];
  readonly cells: (n: number, top: number) => FreeCell[];
  readonly pictures: (n: number, top: number) => PictureBox[];
}

function pageOf(kind: ReportKind, units: SheetUnits): Page {
  const { columns, rows } = kind.readings;
  const facts = kind.facts(units);
  const blocks = pageWords(kind, units);
  const factsAt = READ + rows.length;
  // A narrow row stands between.
  const under = factsAt + facts.length + 1;
  const measured = [...rows.map(({ label, unit }) => `${label}, ${unit(units)}`), ...facts.map(({ label }) => label)];
  // One page holds some 540 pixels of these under its heading, on A4 as on Letter.
  const heights = [28, 26, 38, 22, ...measured.map(() => LINE), 8, 42, 58, 40, 24, 34];

  const cells = (n: number, top: number): FreeCell[] => {
    const shown = (what: string): string => `=IF(exception_count<${n},"",${what})`;
    const list = (texts: readonly string[]): string => shown(`{${texts.map((one) => `"${one}"`).join(";")}}`);
    const place = (key: string): readonly [name: string, column: number] => {
      const block = blocks.find(({ words }) => words.some((word) => word.key === key)) ?? blocks[0];
      return [block.name, block.words.findIndex((word) => word.key === key) + 1];
    };
    const word = (key: string): string => `INDEX(${place(key)[0]},${n},${place(key)[1]})`;
    // The row first: of an INDEX by several numbers the grid of the page sees what stands in cells, not what has spilled.
    const beside = (key: string, count: number, step = 1): string => {
      const [name, first] = place(key);
      return `CHOOSECOLS(INDEX(${name},${n},0),${Array.from({ length: count }, (_, i) => first + i * step).join(",")})`;
    };
    const below = (key: string, count: number, step = 1): string => `TRANSPOSE(${beside(key, count, step)})`;
    const wide = (row: number, key: string, look: FreeCell["look"], from = 1, to: number = LAST): FreeCell =>
      at(top + row, from, shown(word(key)), look, { across: to - from + 1 });
    const size = (down: number, across = 1) => ({ size: { rows: down, columns: across } });
    return [
      at(top, 0, shown(`"${n} of "&exception_count&": "&${word("title")}`), "subheading", { across: LAST + 1 }),
      at(top + 1, 0, list(["grade as found", "judged by", "", ...measured]), "muted", size(measured.length + 3)),
      { ...wide(1, "grade", "strong"), grade: true },
      wide(2, "judged", "strong", 1, 3),
      wide(2, "say", "strong", RIGHT),
      at(
        top + 3,
        1,
        shown(`HSTACK(${columns.map((one) => below(`head_${one}`, rows.length + 1, columns.length)).join(",")})`),
        "label",
        {
          ...size(rows.length + 1, columns.length),
          align: "right",
        },
      ),
      at(top + 3, RIGHT, shown(beside("pictures", 4)), "label", size(1, 4)),
      at(top + factsAt, 1, shown(below("fact_0", facts.length)), "label", size(facts.length)),
      at(top + under, 0, list(["settings used", "speaks against it", "probable cause", "told to"]), "words", size(4)),
      wide(under, "settings", "words"),
      wide(under + 1, "against", "words"),
      wide(under + 2, "cause", "words", 1, 3),
      wide(under + 3, "told", "words", 1, 3),
      at(top + under + 2, RIGHT, list(["action", "due"]), "words", size(2)),
      wide(under + 2, "action", "words", RIGHT + 1),
      wide(under + 3, "due", "words", RIGHT + 1),
      at(top + under + 4, 0, shown('"inspected by "&job_thermographer&" ____________________"'), "label"),
      at(top + under + 4, RIGHT, shown('"received by ____________________ on ____________"'), "label"),
    ];
  };
  const pictures = (n: number, top: number): PictureBox[] =>
    (["thermogram", "photo"] as const).map((what, side) => ({
      key: `exception-${n}-${what}`,
      row: top + READ,
      column: RIGHT + 2 * side,
      rows: measured.length,
      columns: 2,
      numberAt: { row: top + 3, column: RIGHT + 1 + 2 * side },
      kind: what,
    }));
  return { rows: heights.length, heights, cells, pictures };
}
