/**
 * Formulas of ours below one another are worked out as columns, outside the engine. The same formulas on every second row
 * of another sheet go through the engine one by one: cell by cell both must give the same, whatever the cells hold.
 */
import fc from "fast-check";
import { makeWorkbook } from "../support/workbook-file.js";
import { recalcAll, type ReportCell } from "../support/recalc.js";

const ROWS = 40;

/** What may stand in a cell: numbers, numbers as text, texts, truth values, errors, nothing. */
const cell = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.double({ min: 0.05, max: 120, noNaN: true }).map((x) => `<v>${Math.round(x * 1000) / 1000}</v>`),
  },
  { weight: 1, arbitrary: fc.double({ min: -300, max: 1e5, noNaN: true }).map((x) => `<v>${x}</v>`) },
  {
    weight: 3,
    arbitrary: fc
      .constantFrom("58.0", "0.95", " 12", "", "wet", "similar", "ambient", "2-5", "8-14", "50%", "1e2", "F", "C")
      .map((text) => `t="str"><v>${text}</v>`),
  },
  { weight: 1, arbitrary: fc.constantFrom('t="b"><v>1</v>', 't="b"><v>0</v>') },
  {
    weight: 1,
    arbitrary: fc
      .constantFrom("#N/A", "#VALUE!", "#DIV/0!", "#REF!", "#NAME?", "#NUM!")
      .map((e) => `t="e"><v>${e}</v>`),
  },
  { weight: 2, arbitrary: fc.constant("") },
);
const COLUMNS = ["A", "B", "C", "D", "E"];
const sheet = fc.array(fc.array(cell, { minLength: COLUMNS.length, maxLength: COLUMNS.length }), {
  minLength: ROWS,
  maxLength: ROWS,
});

/** `$` stands for the row. Between them every form that goes as a column. */
const FORMULAS = [
  "GREY.CORRECTED(Data!A$,Data!B$,Data!C$)",
  "GREY.CORRECTED(Data!A$,0.9,22,0.98,20,,,,,,Data!E$)",
  'GREY.CORRECTED(IF(Data!A$="","",Data!A$),0.85,-22)',
  'IF(Data!A$="","",GREY.APPARENT(Data!A$,Data!B$,Data!$C$3))',
  'IF(OR(Data!A$="",Data!B$=""),"",GREY.RISE_AT_LOAD(Data!A$,Data!B$,100))',
  'IFERROR(GREY.RISE_AT_LOAD(Data!A$,Data!B$,Data!C$,1.6),"")',
  "IFERROR(GREY.SHARE_OF_LIMIT(Data!A$,Data!B$,Data!C$),-1)",
  'GREY.GRADE(Data!A$,"similar")',
  'GREY.GRADE(GREY.SHARE_OF_LIMIT(Data!A$,90,40),"limit","house-limit",,"words")',
  'GREY.GRADE(Data!A$,Data!E$,,,"action")',
  'GREY.RADIANCE(Data!A$,"3-5")',
  "GREY.RADIANCE(Data!A$,Data!E$,Data!E$)",
  "GREY.AIR_TRANSMISSION(Data!D$,Data!C$,50)",
  "GREY.REFLECTED_BY_REFLECTOR(Data!A$)",
  "GREY.RADIANCE(Data!$A$2)",
  'GREY.GRADE(Data!A$,"similar",Data!$G$1:$K$3)',
  'GREY.SPOT_SIZE(Data!A$,Data!B$,,"F")',
  "GREY.RADIANCE(Data!A$,,TRUE)",
];
const OWN =
  '<c r="G1" t="str"><v>similar</v></c><c r="H1"><v>1</v></c><c r="I1" t="str"><v>from</v></c><c r="J1"><v>2</v></c><c r="K1" t="str"><v>watch</v></c>';
const OWN_2 =
  '<c r="G2" t="str"><v>similar</v></c><c r="H2"><v>4</v></c><c r="I2" t="str"><v>above</v></c><c r="J2"><v>20</v></c><c r="K2" t="str"><v>act</v></c>';

function bookOf(rows: readonly (readonly string[])[]): Uint8Array {
  const data = rows.map((cells, i) => {
    const r = i + 1;
    const text = cells.map(
      (value, c) => `<c r="${COLUMNS[c]}${r}"${value.startsWith("t=") ? ` ${value}` : `>${value}`}</c>`,
    );
    return `<row r="${r}">${text.join("")}${i === 0 ? OWN : i === 1 ? OWN_2 : ""}</row>`;
  });
  const formulas = (step: number): string =>
    rows
      .map((_, i) => {
        const cells = FORMULAS.map((formula, c) => {
          const text = formula.replaceAll(/([A-E])\$(?!\d)/g, `$1${i + 1}`).replaceAll('"', "&quot;");
          return `<c r="${String.fromCharCode(65 + c)}${i * step + 1}"><f>${text}</f></c>`;
        });
        return `<row r="${i * step + 1}">${cells.join("")}</row>`;
      })
      .join("");
  return makeWorkbook({
    sheets: [
      { name: "Data", rows: data.join("") },
      { name: "Run", rows: formulas(1) },
      { name: "Apart", rows: formulas(2) },
    ],
  });
}

const rounded = (value: unknown): unknown =>
  typeof value === "number" ? Number((value + Math.sign(value) * 1000).toPrecision(13)) : value;

test("a column of formulas gives what the engine gives cell by cell", async () => {
  const books = fc.sample(sheet, { numRuns: 12, seed: 20261126 });
  const named = Object.fromEntries(books.map((rows, i) => [`${i}.xlsx`, bookOf(rows)]));
  const { outcome, reports } = await recalcAll(named);
  expect(outcome).toMatchObject({ status: 0, stderr: "" });
  let errors = 0;
  for (const report of reports.values()) {
    const of = (name: string): Map<string, ReportCell> =>
      new Map(report.cells.filter(({ sheet }) => sheet === name).map((one) => [one.cell, one]));
    const [run, apart] = [of("Run"), of("Apart")];
    expect(run.size).toBe(ROWS * FORMULAS.length);
    for (const [place, one] of run) {
      const other = apart.get(place.replace(/\d+/, (row) => String(Number(row) * 2 - 1)));
      const about = { formula: one.formula, status: one.status };
      // A column may round the last digit otherwise than a single cell, as a spill of the engine's does.
      const [value, expected] = [one.recalculated, other?.recalculated].map(rounded);
      expect({ ...about, value }).toEqual({ formula: one.formula, status: other?.status, value: expected });
      if (typeof one.recalculated === "object") errors++;
    }
  }
  // Both ways have to be trodden: answers and refusals.
  expect(errors).toBeGreaterThan(1000);
  expect(errors).toBeLessThan(12 * ROWS * FORMULAS.length - 1000);
});

test("the same whether written out, shared, or through a table's row; a circle and a chain go row by row", async () => {
  const n = 20;
  const rows = Array.from({ length: n }, (_, i) => {
    const r = i + 2;
    const shared = `<f t="shared"${i === 0 ? ` ref="C2:C${n + 1}"` : ""} si="3"${i === 0 ? ">GREY.SHARE_OF_LIMIT(A2,90,40)</f>" : "/>"}`;
    return (
      `<row r="${r}"><c r="A${r}"><v>${40 + r}</v></c><c r="B${r}"><f>GREY.SHARE_OF_LIMIT(A${r},90,40)</f></c><c r="C${r}">${shared}</c>` +
      `<c r="D${r}"><f>GREY.SHARE_OF_LIMIT(T[[#This Row],[temp]],90,40)</f></c>` +
      // A chain: each is one more than the one above, by a function that gives back what it is given.
      `<c r="E${r}"><f>${i === 0 ? "GREY.SHARE_OF_LIMIT(A2,1,0)" : `GREY.SHARE_OF_LIMIT(E${r - 1},1,0)`}</f></c>` +
      `<c r="F${r}"><f>GREY.SHARE_OF_LIMIT(F${r},1,0)</f><v>5</v></c></row>`
    );
  });
  const head =
    '<row r="1">' +
    ["temp", "b", "c", "d"].map((name, c) => `<c r="${"ABCD"[c]}1" t="str"><v>${name}</v></c>`).join("") +
    "</row>";
  const columns = ["temp", "b", "c", "d"].map((name, i) => `<tableColumn id="${i + 1}" name="${name}"/>`).join("");
  const table = `<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" name="T" displayName="T" ref="A1:D${n + 1}"><tableColumns count="4">${columns}</tableColumns></table>`;
  const book = makeWorkbook({ sheets: [{ name: "S", rows: head + rows.join(""), tables: [table] }] });
  const { reports } = await recalcAll({ "a.xlsx": book });
  const cells = reports.get("a.xlsx")!.cells;
  for (let r = 2; r <= n + 1; r++) {
    const at = (column: string): ReportCell | undefined => cells.find(({ cell }) => cell === `${column}${r}`);
    // By hand: (40 + r − 40)/(90 − 40).
    for (const column of ["B", "C", "D"]) expect(at(column)?.recalculated).toBeCloseTo(r / 50, 14);
    expect(at("E")?.recalculated).toBe(42);
    expect(at("F")).toMatchObject({ status: "kept", stored: 5, reason: "it leads back to itself" });
    expect(at("C")?.formula).toBe(`GREY.SHARE_OF_LIMIT(A${r},90,40)`);
  }
});

test("one kept cell keeps the rows that depend on it, and no other", async () => {
  const rows = Array.from({ length: 12 }, (_, i) => {
    const r = i + 1;
    const input = r === 5 ? "<f>GREY.SHARE_OF_LIMIT(NOSUCH(1),1,0)</f><v>70</v>" : "<v>80</v>";
    return (
      `<row r="${r}"><c r="A${r}">${input}</c><c r="B${r}"><f>GREY.SHARE_OF_LIMIT(A${r},90,40)</f><v>7</v></c>` +
      `<c r="C${r}"><f>GREY.SHARE_OF_LIMIT(B${r},1,0)</f><v>7</v></c></row>`
    );
  });
  const { reports } = await recalcAll({ "a.xlsx": makeWorkbook({ sheets: [{ name: "S", rows: rows.join("") }] }) });
  const report = reports.get("a.xlsx")!;
  expect(report.cells.filter(({ status }) => status === "kept").map(({ cell }) => cell)).toEqual(["A5", "B5", "C5"]);
  expect(report.summary).toEqual({ formulas: 25, same: 0, changed: 22, kept: 3 });
});
