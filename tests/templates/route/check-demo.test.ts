/** CHECK over the demos as they stand: headers and rows of the sheet, Job's two columns as they are read there. */
import { catalogue } from "../../../src/functions/catalogue.js";
import type { Cell } from "../../../src/functions/contract.js";
import type { Units } from "../../../src/functions/units.js";
import { demoMechanicalRoute } from "../../../src/templates/mechanical/demo/route.js";
import { demoRoute } from "../../../src/templates/route/demo/route.js";
import { worked, type WorkedRoute } from "./fixture.js";

const books = [demoRoute("C"), demoRoute("F"), demoMechanicalRoute("C")];
let routes: readonly WorkedRoute[];
beforeAll(async () => {
  routes = await worked(...books);
}, 120_000);

interface Finding {
  readonly row: number;
  readonly asset: string;
  readonly column: string;
  readonly kind: string;
  readonly what: string;
}

const text = (cell: unknown): string => (typeof cell === "string" ? cell : "");

function found(at: number, units: Units, part: "all" | "typed"): Finding[] {
  const [book, route] = [books[at]!, routes[at]!];
  const [sheet] = book.sheets;
  const form = book.sheets.find(({ kind }) => kind === "form");
  if (sheet?.kind !== "table" || form?.kind !== "form") throw new Error("no route");
  const columns = part === "all" ? [...sheet.columns, ...sheet.computed] : sheet.columns;
  const values = route.sheets.find(({ name }) => name === "Job")!.fields;
  const job = form.fields.map(({ label, definedName = "" }): Cell[] => [label, values[definedName] ?? null]);
  const rows = sheet.rows.map((_, row) => columns.map(({ key }) => route.columns[key]?.[row] ?? null));
  const check = catalogue.find(({ name }) => name === "CHECK")!;
  const table = check.evaluate([[columns.map(({ header }) => header)], rows, job, "findings", units]);
  return table.slice(1).map(([row, column, kind, what]) => ({
    row: Number(row),
    asset: text(route.columns.asset_id?.[Number(row) - 1]),
    column: text(column),
    kind: text(kind),
    what: text(what),
  }));
}

test.each([
  [0, "C"],
  [1, "F"],
  [2, "C"],
] as const)("book %i: nothing of the whole route, no line or column unknown", (at, units) => {
  const findings = found(at, units, "all");
  expect(findings.length).toBeGreaterThan(1);
  expect(findings.filter(({ row }) => row === 0)).toEqual([]);
});

test("only what the demo was made to lack is needed", () => {
  const needed = (at: number) =>
    found(at, "C", "all")
      .filter(({ kind }) => kind === "needed")
      .map(({ asset, column }) => `${asset} ${column}`);
  expect(needed(0)).toEqual(["MV-C2 window_temp", "MCC2-M4 amps_middle", "MCC2-M7 surrounding_air"]);
  // Emissivity 0.25 and nothing to compare with; the gearbox has a limit of its own, the belt is not seen.
  expect(needed(2)).toEqual(["RW1-CPL reference"]);
});

test("hot by their load and within their limit is no exception, and has no edge over similar", () => {
  const of = (asset: string) => found(0, "C", "all").filter((one) => one.asset === asset);
  expect(routes[0]!.cell("TX1-LV", "status")).toBe("no exception");
  expect(of("TX1-LV")).toEqual([]);
  expect(of("DB-PACK").filter(({ column }) => column === "rise_similar")).toEqual([]);
});

test("of the typed table alone it says what is looked up elsewhere, once, and asks for none of it", () => {
  for (const at of [0, 2]) {
    const findings = found(at, "C", "typed");
    expect(findings.filter(({ row }) => row === 0).map(({ what }) => what)).toEqual([
      "what the lists of assets and surfaces hold was not handed over",
    ]);
    expect(findings.filter(({ column }) => ["emissivity", "reference"].includes(column))).toEqual([]);
  }
});
