/** A route of 2,000 rows with twenty computed columns of ours, as single cells and as spills: in seconds, and it says what it did. */
import { Folder, recalc, textsOf } from "../support/recalc.js";
import { makeWorkbook } from "../support/workbook-file.js";

const ROWS = 2000;
const COLUMNS = 20;
/** Generous for a busy machine; how fast it is on a quiet one is a matter of the bench. */
const MOST_SECONDS = 30;

const letters = (column: number): string =>
  column < 26 ? String.fromCharCode(65 + column) : `A${String.fromCharCode(65 + column - 26)}`;

/** Spot sizes with three pixels of k mrad, by hand 3·k·r mm from r metres, which is a tenth of the row. */
const formula = (k: number, from: number, to = from): string =>
  `_xldudf_GREY_SPOT_SIZE(A${from}${to === from ? "" : `:A${to}`},${k})`;
const right = (k: number, row: number): number => (3 * k * row) / 10;

function book(isSpilled: boolean): Uint8Array {
  const rows = Array.from({ length: ROWS }, (_, i) => {
    const r = i + 1;
    const computed = Array.from({ length: COLUMNS }, (_unused, k) => {
      const place = `${letters(k + 1)}${r}`;
      if (!isSpilled) return `<c r="${place}"><f>${formula(k + 1, r)}</f><v>0</v></c>`;
      if (i > 0) return `<c r="${place}"><v>0</v></c>`;
      return `<c r="${place}" cm="1"><f t="array" ref="${place}:${letters(k + 1)}${ROWS}">${formula(k + 1, 1, ROWS)}</f><v>0</v></c>`;
    });
    return `<row r="${r}"><c r="A${r}"><v>${r / 10}</v></c>${computed.join("")}</row>`;
  });
  return makeWorkbook({ sheets: [{ name: "Route", rows: rows.join("") }], hasDynamicArrays: isSpilled, level: 1 });
}

test.each([
  ["single cells", false],
  ["spills", true],
])("as %s", async (_, isSpilled) => {
  const folder = new Folder();
  try {
    const file = folder.put("route.xlsx", book(isSpilled));
    const start = performance.now();
    const { status, stdout, stderr } = await recalc([file, "-o", folder.at("out.xlsx")]);
    const seconds = (performance.now() - start) / 1000;
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    const formulas = isSpilled ? "20 formulas" : "40,000 formulas";
    expect(stdout).toContain(`${formulas}, 40,000 cells: 0 as saved, 40,000 different, 0 kept; written to`);
    expect(seconds).toBeLessThan(MOST_SECONDS);
    const text = textsOf(folder.read("out.xlsx"))["xl/worksheets/sheet1.xml"]!;
    const values = new Map(
      [...text.matchAll(/<c r="([A-Z]+\d+)"[^>]*>(?:<f[^>]*>[^<]*<\/f>)?<v>([^<]*)<\/v>/g)].map(([, place, value]) => [
        place,
        Number(value),
      ]),
    );
    for (const row of [1, 2, 777, ROWS]) {
      for (let k = 1; k <= COLUMNS; k++) expect(values.get(`${letters(k)}${row}`)).toBeCloseTo(right(k, row), 8);
    }
    expect(await recalc([folder.at("out.xlsx"), "--check"])).toMatchObject({ status: 0 });
  } finally {
    folder.remove();
  }
});
