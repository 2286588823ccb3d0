/**
 * Criteria of the workbook's own. The surfaces are black and 5 cm away in dry air, so a rise is the difference of its
 * readings to a hundredth: 28 over 22 and 22 °C is 6 K (10.8 °F) over similar, grade 2 by the copied table (from 4 K, 7.2 °F;
 * ANSI/NETA ATS-2003, table 100.18), and grade 1 once its edge is moved beyond it.
 */
import type { Cell } from "../../src/functions/contract.js";
import { catalogue } from "../../src/functions/catalogue.js";
import { readContents } from "../../src/host/file/read/contents.js";
import { describedBook } from "../../src/host/file/write/described.js";
import { packBook } from "../../src/host/file/write/package.js";
import { OWN_CRITERIA } from "../../src/templates/common/criteria.js";
import type { BookDescription, TableSheet } from "../../src/templates/contract.js";
import { refill } from "../../src/templates/refill/refill.js";
import { lastRoute } from "../../src/templates/route/next-read.js";
import { nextRoute } from "../../src/templates/route/next.js";
import { routeBook } from "../../src/templates/route/book.js";
import type { Units } from "../../src/functions/units.js";
import { inThePumpHouse, read } from "./mechanical/fixture.js";
import { worked, type WorkedRoute } from "./route/fixture.js";

const job = { reflected: 20, distance: 0.05, humidity: 1, criteria: OWN_CRITERIA, criteria_limit: OWN_CRITERIA };
const route = (units: Units = "C"): BookDescription =>
  routeBook({
    title: "Yard (invented)",
    about: [],
    job,
    assets: [{ asset_id: "C", surface: "black", expected_max_A: 125, rated_A: 100, permitted_rise: 50 }],
    windows: [],
    surfaces: [{ surface: "black", emissivity: 1, known_from: "assumed" }],
    rows: [
      {
        ...{ asset_id: "C", status: "exception", thermal_image: "IR-2", time: 0.5, surrounding_air: 20 },
        ...{ left: 22, middle: 28, right: 22, amps_left: 100, amps_middle: 100, amps_right: 100 },
      },
    ],
    units,
  });
/** One pump's end 12 K over the other: grade 2 from 10 K on in the copied table. */
const pump = inThePumpHouse(
  [
    { ...read, asset_id: "P1-DE", reading: 52 },
    { ...read, asset_id: "P1-NDE", reading: 40 },
  ],
  { job: { criteria: OWN_CRITERIA } },
);

function criteriaIn(book: BookDescription): TableSheet {
  const sheet = book.sheets.find(({ name }) => name === "Criteria");
  if (sheet?.kind !== "table") throw new Error("no sheet Criteria");
  return sheet;
}

/** The book with cells of the table typed over: the row's place, then cells by key. */
function edited(book: BookDescription, at: number, cells: Readonly<Record<string, Cell>>): BookDescription {
  const sheet = criteriaIn(book);
  const rows = sheet.rows.map((row, place) =>
    place === at ? row.map((cell, c) => cells[sheet.columns[c]!.key] ?? cell) : row,
  );
  return { ...book, sheets: book.sheets.map((one) => (one === sheet ? { ...sheet, rows } : one)) };
}

const edges = (book: BookDescription): Cell[] => {
  const sheet = criteriaIn(book);
  return sheet.rows.map((row) => row[sheet.columns.findIndex(({ key }) => key === "lower_edge")] ?? null);
};

let made: readonly WorkedRoute[];
beforeAll(async () => {
  made = await worked(
    route(),
    edited(route(), 1, { lower_edge: 7, words: "ours" }),
    edited(route("F"), 1, { lower_edge: 10.7 }),
    edited(route("F"), 1, { lower_edge: 10.9 }),
    pump,
    edited(pump, 1, { lower_edge: 13 }),
    edited(route(), 1, { lower_edge: 0.5 }),
    routeBook({
      ...{ title: "Empty", about: [], job: {}, assets: [], windows: [], surfaces: [], units: "C" },
      rows: [{}],
    }),
  );
}, 120_000);

const found = (at: number, row: string): string => String(made[at]!.cell(row, "grade_found"));

test("they begin as the job's built-in sets, of which an edited edge changes the grade", () => {
  expect(found(0, "C")).toBe("2 of 4: probable fault");
  expect(found(1, "C")).toBe("1 of 4: possible fault");
});

test("edges are in the units of the workbook: 10.8 °F lies between 10.7 and 10.9", () => {
  expect(found(2, "C")).toMatch(/^2 of 4/);
  expect(found(3, "C")).toMatch(/^1 of 4/);
});

test("a copied table is in the units of the book; a share of a limit has none", () => {
  // NETA: 1, 4, 15; 1, 11, 21, 40 K; ours of a limit: 0.75, 0.9, 1, 1.2.
  expect(edges(route())).toEqual([1, 4, 15, 1, 11, 21, 40, 0.75, 0.9, 1, 1.2]);
  expect(edges(route("F"))).toEqual([1.8, 7.2, 27, 1.8, 19.8, 37.8, 72, 0.75, 0.9, 1, 1.2]);
});

test("the mechanical route as well", () => {
  expect(found(4, "P1-DE")).toMatch(/^2 of 4/);
  expect(found(5, "P1-DE")).toMatch(/^1 of 4/);
});

test("wherever a grade stands, they are called own", () => {
  expect(made[0]!.cell("C", "judged_by")).toBe("over similar (own criteria (sheet Criteria))");
  for (const sheet of ["Route", "Exceptions", "Exception pages", "Due"])
    expect(made[0]!.sheets.find(({ name }) => name === sheet)?.heading.join(" ")).toContain(
      "own criteria (sheet Criteria)",
    );
});

test("a table that cannot be used says where it is wrong, and nothing is graded by it", () => {
  const [, , , , , , bad] = made;
  const { columns } = bad!.sheets.find(({ name }) => name === "Criteria")!;
  expect(columns.faults?.slice(0, 3)).toEqual(["", "edge not above that of the row before", ""]);
  expect(bad!.cell("C", "grade_found")).toBe("no grade");
  expect(bad!.cell("C", "remarks")).toContain("own criteria cannot be used: see the sheet Criteria");
  expect(bad!.errors).toEqual([]);
});

test("an empty job begins no heading with commas", () => {
  const [first] = made.at(-1)!.sheets;
  expect(first?.heading[1]).toMatch(/^Job not filled in yet\. Criteria: /);
});

test("CHECK takes them for criteria", () => {
  const check = catalogue.find(({ name }) => name === "CHECK")!;
  const findings = (criteria: string): string =>
    JSON.stringify(check.evaluate([[["asset_id"]], [["A"]], [["criteria", criteria]], "findings"]));
  expect(findings("mine")).toContain("job_criteria");
  expect(findings(OWN_CRITERIA)).not.toContain("job_criteria");
});

test("the next route carries them over, in its own units", () => {
  const last = edited(route(), 1, { lower_edge: 7, words: "ours" });
  const bytes = packBook(describedBook(last, { marks: { GREYBODY_TEMPLATE: "route", GREYBODY_UNITS: "C" } }));
  const contents = readContents(bytes);
  for (const to of ["C", "F"] as const) {
    const { book: carried, template, left } = refill(contents, to);
    const next = nextRoute({ template, carried, last: lastRoute(contents, carried), from: "C", to, left });
    const [, edge, , , , , , share] = edges(next.book);
    expect([edge, share]).toEqual([to === "C" ? 7 : 12.6, 0.75]);
    const fields = next.book.sheets.flatMap((sheet) => (sheet.kind === "form" ? sheet.fields : []));
    expect(fields.find(({ definedName }) => definedName === "job_criteria")?.value).toBe(OWN_CRITERIA);
    expect(criteriaIn(next.book).rows[1]).toContain("ours");
  }
});
