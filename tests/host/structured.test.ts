import { columnLetters, resolveStructured, type TablePosition } from "../../src/host/embedded/structured.js";

const readings: TablePosition = {
  name: "Readings",
  sheet: "Route",
  headerRow: 5,
  firstRow: 6,
  lastRow: 29,
  columns: [
    { names: ["apparent", "Apparent"], column: 2 },
    { names: ["Load A"], column: 3 },
    { names: ["No [1] #'@"], column: 4 },
  ],
  beside: [{ names: ["corrected", "Corrected"], column: 6 }],
};
const assets: TablePosition = {
  name: "Assets",
  sheet: "Asset list",
  headerRow: 0,
  firstRow: 1,
  lastRow: 3,
  totalsRow: 4,
  columns: [
    { names: ["Tag"], column: 0 },
    { names: ["Rated"], column: 27 },
  ],
};
const empty: TablePosition = { ...readings, name: "Nothing", lastRow: 5 };
const tables = [readings, assets, empty];
const inside = { sheet: "Route", row: 7, table: "Readings" };

test.each([
  ["=Readings[Apparent]", "=$C$7:$C$30"],
  ["=readings[APPARENT]", "=$C$7:$C$30"],
  ["=[apparent]", "=$C$7:$C$30"],
  ["=[corrected]*2", "=$G$7:$G$30*2"],
  ["=Readings[@Apparent]", "=$C$8"],
  ["=[@Apparent]", "=$C$8"],
  ["=[@[Load A]]", "=$D$8"],
  ["=Readings[@]", "=$C$8:$E$8"],
  ["=Readings[[#This Row],[Load A]]", "=$D$8"],
  ["=Readings[[#this row],[Apparent]:[Load A]]", "=$C$8:$D$8"],
  ["=Readings[[Apparent]:[Load A]]", "=$C$7:$D$30"],
  ["=Readings[[Load A]:[Apparent]]", "=$C$7:$D$30"],
  ["=Readings[ [#Headers] , [Load A] ]", "=$D$6"],
  ["=Readings[[#Headers],[#Data],[Load A]]", "=$D$6:$D$30"],
  ["=Readings[#All]", "=$C$6:$E$30"],
  ["=Readings[#Headers]", "=$C$6:$E$6"],
  ["=Readings[#Data]", "=$C$7:$E$30"],
  ["=Readings[]", "=$C$7:$E$30"],
  ["=ROWS(Readings)", "=ROWS($C$7:$E$30)"],
  ["=Readings[No '[1'] '#'''@]", "=$E$7:$E$30"],
  ["=Readings[@[No '[1'] '#'''@]]", "=$E$8"],
  ["=XLOOKUP([@Apparent],Assets[Tag],Assets[Rated])", "=XLOOKUP($C$8,'Asset list'!$A$2:$A$4,'Asset list'!$AB$2:$AB$4)"],
  ["=Assets[[#Totals],[Rated]]", "='Asset list'!$AB$5"],
  ["=Assets[#All]", "='Asset list'!$A$1:$AB$5"],
  ["=Assets[[#Data],[#Totals],[Tag]]", "='Asset list'!$A$2:$A$5"],
])("%s becomes %s", (formula, expected) => {
  expect(resolveStructured(formula, tables, inside)).toEqual({ formula: expected, unresolved: [] });
});

test.each([
  ["=Readings[Missing]", "=#REF!", "Readings[Missing]"],
  ["=Unknown[Apparent]", "=#REF!", "Unknown[Apparent]"],
  ["=Readings[#Totals]", "=#REF!", "Readings[#Totals]"],
  ["=Readings[#Wrong]", "=#REF!", "Readings[#Wrong]"],
  ["=Readings[[Apparent],[Load A]]", "=#REF!", "Readings[[Apparent],[Load A]]"],
  ["=Readings[[#All]:[#Data]]", "=#REF!", "Readings[[#All]:[#Data]]"],
  ["=SUM(Nothing[Apparent],1)", "=SUM(#REF!,1)", "Nothing[Apparent]"],
])("%s becomes %s and is told", (formula, expected, told) => {
  expect(resolveStructured(formula, tables, inside)).toEqual({ formula: expected, unresolved: [told] });
});

test("a row outside the table has no this row", () => {
  expect(resolveStructured("=[@Apparent]", tables, { ...inside, row: 30 }).formula).toBe("=#VALUE!");
  expect(resolveStructured("=Readings[@Apparent]", tables, { sheet: "Asset list", row: 7 }).formula).toBe("=#VALUE!");
});

test("the sheet is named where the formula stands on another one", () => {
  expect(resolveStructured("=Readings[Apparent]", tables, { sheet: "Asset list", row: 1 }).formula).toBe(
    "=Route!$C$7:$C$30",
  );
  const quoted = { ...assets, sheet: "Bob's list" };
  expect(resolveStructured("=Assets[Tag]", [quoted], inside).formula).toBe("='Bob''s list'!$A$2:$A$4");
});

test.each(['="Readings[Apparent]"', "='Readings'!A1", "=Readings!A1", "=Readings(1)", "=A1:B2", "=ReadingsToo"])(
  "%s stays as it is",
  (formula) => {
    expect(resolveStructured(formula, tables, inside)).toEqual({ formula, unresolved: [] });
  },
);

test("a bare column without a table of its own cannot be resolved", () => {
  expect(resolveStructured("=[apparent]", tables, { sheet: "Route", row: 7 })).toEqual({
    formula: "=#REF!",
    unresolved: ["[apparent]"],
  });
});

test("columns beyond Z", () => {
  expect([0, 25, 26, 51, 701, 702, 16383].map(columnLetters)).toEqual(["A", "Z", "AA", "AZ", "ZZ", "AAA", "XFD"]);
});
