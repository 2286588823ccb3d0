/** A client's table in our columns: invented tables, numbers by hand. */
import { findTable } from "../../../src/functions/claims/find-table.js";
import { prepareReport } from "../../../src/functions/claims/prepare.js";
import type { Cell } from "../../../src/functions/contract.js";

function prepared(grid: readonly (readonly Cell[])[], isText = true) {
  const table = findTable(grid, new Set());
  if (table === undefined) throw new Error("no table");
  const report = prepareReport(table, { told: new Map(), isText });
  return { ...report, table, column: (name: string) => report.rows.map((row) => row[report.names.indexOf(name)]) };
}

test("a load in per cent is of the full load, and no column in amperes is", () => {
  const grid = [
    ["Item", "Load (%)", "Max load (A)", "ΔT (K)"],
    ["P1", "50 %", "200", "10.0"],
    ["P2", "74", "180", "12.0"],
  ];
  const { notes, column } = prepared(grid);
  expect(column("load")).toEqual(["50", "74"].map(Number));
  expect(column("reference_load")).toEqual([100, 100]);
  expect(notes).toContain('"Max load (A)" left out, since "Load (%)" is in per cent');
});

test("a per cent sign close to the name is a unit", () => {
  const grid = [
    ["Item", "Load%", "Rated load (A)", "ΔT (K)"],
    ["P1", "50", "200", "10.0"],
  ];
  const { names, column } = prepared(grid);
  expect(column("reference_load")).toEqual([100]);
  expect(names).not.toContain("rated_load");
});

test("a sheet that formats 0.74 as 74 % holds 0.74; cells alone may say that a load is in per cent", () => {
  const shares = [
    ["Item", "Load (%)", "ΔT (K)"],
    ["P1", 0.74, 10],
    ["P2", 1, 12],
  ];
  expect(prepared(shares, false).column("reference_load")).toEqual([1, 1]);
  const texts = [
    ["Item", "Load", "ΔT (K)"],
    ["P1", "74 %", "10"],
    ["P2", "80%", "12"],
  ];
  expect(prepared(texts).column("reference_load")).toEqual([100, 100]);
  const mixed = [
    ["Item", "Load", "ΔT (K)"],
    ["P1", "74 %", "10"],
    ["P2", "118 A", "12"],
  ];
  expect(prepared(mixed).column("load")).toEqual(["74 %", "118 A"]);
});

test("cells of another unit keep the digits of their column, not those that a formula left in one cell", () => {
  const grid = [
    ["Item", "Max temp (°C)", "Ref temp (°C)", "ΔT (°F)"],
    ["P1", 58, 45, 23.4],
    ["P2", 60, 45, 27],
    ["P3", 60, 45, 27.00001],
    ["P4", 60, 45, 26.9],
  ];
  expect(prepared(grid, false).column("stated_rise")).toEqual(["23.4 °F", "27.0 °F", "27.00001 °F", "26.9 °F"]);
  const beyond = [
    ["Item", "Max temp (°C)", "Apparent temp (°F)"],
    ["P1", "58.0", "150+"],
  ];
  expect(prepared(beyond).column("apparent")).toEqual(["150+ °F"]);
});

test("headers in two lines of which one cell reaches down; headers repeated on each page", () => {
  const { mapping, rows } = prepared([
    ["Equipment", "Temperature (°C)", "", "Emissivity"],
    ["", "Max", "Apparent", ""],
    ["P1", "58.0", "58.0", "0.95"],
    ["", "Max", "Apparent", ""],
    ["P2", "58.0", "58.0", "0.95"],
  ]);
  expect(mapping.map(({ column }) => column)).toEqual(["item", "stated_temp", "apparent", "emissivity"]);
  expect(rows).toHaveLength(2);
});

test("names that every object has are headers like any other", () => {
  const { mapping } = prepared([
    ["constructor", "__proto__", "hasOwnProperty", "Max temp (°C)", "Emissivity"],
    ["1", "2", "3", "58.0", "0.95"],
  ]);
  expect(mapping.map(({ column }) => column)).toEqual([undefined, undefined, undefined, "stated_temp", "emissivity"]);
});

const MANY = 100_000;
test.each([
  ["zeros", `${"0".repeat(MANY)}x`],
  ["spaces", `1${" ".repeat(MANY)}1`],
  ["line ends", `a${"\n".repeat(MANY)}a`],
  ["pluses", `${"+".repeat(MANY)}1`],
  ["brackets", "(".repeat(MANY)],
  ["commas", `${"1,".repeat(MANY)}1`],
  ["numbers", "1 ".repeat(MANY)],
])("100,000 %s in a cell or a header cost no time", (_, hostile) => {
  const before = Date.now();
  prepared([
    ["Item", "Max temp (°C)", "Emissivity", hostile],
    [hostile, "58.0", "0.95", "1"],
    ["P2", hostile, hostile, hostile],
    ["P3", "58.0", "0.95", hostile],
  ]);
  // What grows with the square of the length takes many seconds.
  expect(Date.now() - before).toBeLessThan(6000);
});

test("a sheet of thousands of columns costs little", () => {
  const before = Date.now();
  const wide = Array.from({ length: 30 }, (_, r) => Array.from({ length: 4000 }, (__, c) => `temp ${r} x${c}`));
  prepared([...wide, ["Item", "Max temp (°C)"], ["P1", "58.0"]]);
  expect(Date.now() - before).toBeLessThan(15_000);
});
