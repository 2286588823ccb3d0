/**
 * Each function that is trusted in workbooks of others, asked twice over the same cells: as `greybody recalc --all`
 * works it out, and by hyperformula (GPL, for tests only, never shipped). Where the two differ, Microsoft's page of the
 * function says who is right: trusted-notes.ts. What is not trusted after all counts neither way.
 */
import { HyperFormula } from "hyperformula";
import { BY_CORPUS, NOTES, STANDS } from "./trusted-notes.js";
import { recalcAll } from "../support/recalc.js";
import { cases, GRID, TRUSTED, type Value } from "../support/second-opinion.js";
import { makeWorkbook } from "../support/workbook-file.js";

const FIRST_ROW = 21;
const COLUMN = 9;

interface Metadata {
  readonly parameters?: readonly { readonly optionalArg?: boolean; readonly defaultValue?: unknown }[];
  readonly repeatLastArgs?: number;
}

function arityOf(name: string): ReturnType<Parameters<typeof cases>[0]> {
  try {
    const plugin = HyperFormula.getFunctionPlugin(name) as unknown as
      { implementedFunctions: Record<string, Metadata>; aliases?: Record<string, string> } | undefined;
    const found = plugin?.implementedFunctions[name] ?? plugin?.implementedFunctions[plugin.aliases?.[name] ?? ""];
    return found && { parameters: found.parameters ?? [], repeats: found.repeatLastArgs ?? 0 };
  } catch {
    return undefined;
  }
}

const formulas = cases(arityOf);
const isKnown = (name: string): boolean => arityOf(name) !== undefined;

const escaped = (text: string): string => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

function cellXml(value: Value, row: number, column: number): string {
  if (value === null) return "";
  const type = typeof value === "number" ? "" : typeof value === "boolean" ? ' t="b"' : ' t="str"';
  return `<c r="${"ABCDEFGH"[column]}${row + 1}"${type}><v>${typeof value === "boolean" ? Number(value) : value}</v></c>`;
}

const book = makeWorkbook({
  sheets: [
    {
      name: "S",
      rows:
        GRID.map((row, r) => `<row r="${r + 1}">${row.map((value, c) => cellXml(value, r, c)).join("")}</row>`).join(
          "",
        ) +
        formulas
          .map(
            (formula, i) => `<row r="${FIRST_ROW + i}"><c r="J${FIRST_ROW + i}"><f>${escaped(formula)}</f></c></row>`,
          )
          .join(""),
    },
  ],
});

/** The second engine knows true and false as functions only, and text in a cell by an apostrophe. */
function secondOpinions(): readonly unknown[] {
  const rows = [
    ...GRID.map((row) => row.map((value) => (typeof value === "string" ? `'${value}` : value))),
    ...Array.from({ length: FIRST_ROW - 1 - GRID.length }, () => []),
    ...formulas.map((formula) => [
      ...new Array<null>(COLUMN).fill(null),
      `=${formula.replace(/\b(TRUE|FALSE)\b(?!\()/g, "$1()")}`,
    ]),
  ];
  const engine = HyperFormula.buildFromArray(rows, {
    licenseKey: "gpl-v3",
    useArrayArithmetic: true,
    useWildcards: true,
    evaluateNullToZero: true,
    leapYear1900: true,
    nullDate: { year: 1899, month: 12, day: 31 },
  });
  const values = formulas.map((_, i) => engine.getCellValue({ sheet: 0, row: FIRST_ROW - 1 + i, col: COLUMN }));
  engine.destroy();
  return values.map((value) => (typeof value === "object" && value !== null ? { error: value.value } : (value ?? 0)));
}

const isError = (value: unknown): value is { error: string } => typeof value === "object" && value !== null;
/** It knows no such function, or has no room for what spills. */
const hasNone = (value: unknown): boolean => isError(value) && /^#(?:NAME\?|SPILL!|ERROR!)$/.test(value.error);

function isSame(a: unknown, b: unknown): boolean {
  if (typeof a !== "number" || typeof b !== "number") return JSON.stringify(a) === JSON.stringify(b);
  return Math.abs(a - b) <= 1e-9 * Math.max(1e-3, Math.abs(a), Math.abs(b));
}

const functionOf = (formula: string): string => /^([A-Z0-9.]+)\(/.exec(formula)?.[1] ?? "";

let agreed: Map<string, number>;
let differ: string[];
let compared = 0;
beforeAll(async () => {
  const { reports } = await recalcAll({ "asked.xlsx": book }, ["--all"]);
  const cells = new Map(reports.get("asked.xlsx")!.cells.map((cell) => [cell.cell, cell]));
  agreed = new Map();
  differ = [];
  for (const [i, theirs] of secondOpinions().entries()) {
    const ours = cells.get(`J${FIRST_ROW + i}`);
    const formula = formulas[i]!;
    if (ours === undefined || ours.status === "kept" || hasNone(theirs)) continue;
    compared++;
    const name = functionOf(formula);
    if (isSame(ours.recalculated, theirs)) agreed.set(name, (agreed.get(name) ?? 0) + 1);
    // Of which kind an error is, engines see in many ways; the corpus has the kinds.
    else if (!isError(ours.recalculated) || !isError(theirs)) {
      differ.push(`${formula}: ours ${JSON.stringify(ours.recalculated)}, theirs ${JSON.stringify(theirs)}`);
    }
  }
}, 120_000);

test("both agree, and where they do not a note says why", () => {
  const noted = (line: string): boolean => NOTES.some(({ of }) => of.test(line));
  expect(compared).toBeGreaterThan(2000);
  expect(differ.filter((line) => !noted(line))).toEqual([]);
  expect(NOTES.filter(({ of }) => !differ.some((line) => of.test(line)))).toEqual([]);
});

test("every function that is trusted is supported by both or by the corpus", () => {
  const alone = [...TRUSTED.keys()].filter((name) => (agreed.get(name) ?? 0) < 1);
  expect(alone.filter((name) => !BY_CORPUS.includes(name) && !(name in STANDS))).toEqual([]);
  const listed = [...BY_CORPUS, ...Object.keys(STANDS)];
  expect(listed.filter((name) => !TRUSTED.has(name) || !alone.includes(name))).toEqual([]);
  expect(alone.filter((name) => isKnown(name) && !listed.includes(name))).toEqual([]);
});
