/** What a row says where nobody asks for the table. */
import { CHECK } from "../../../src/functions/check.js";
import type { Cell, Grid } from "../../../src/functions/contract.js";
import { CALM } from "./route.js";

describe("what is of the whole route, in the texts", () => {
  const text = (headers: Cell[], cells: Grid, job?: Grid): Cell[] =>
    CHECK.evaluate([[headers], cells, job]).map(([cell]) => cell ?? null);
  const calm = Object.keys(CALM);
  const values = Object.values(CALM);

  test("begins the first row that has anything in it", () => {
    const empty = calm.map(() => null);
    const job: Grid = [
      ["emissivity", 95],
      ["humidity", 0.5],
    ];
    expect(text(calm, [empty, values, values.map((v) => (v === "IR-0101" ? "IR-0102" : v))], job)).toEqual([
      "",
      "Route: job_emissivity 95 cannot be: 0.01 to 1; 0.95?; job_humidity 0.5 %.",
      "",
    ]);
  });

  test("is counted where there is more of it", () => {
    expect(text([...calm, "wnd", "colour"], [[...values, 5, "red"]], [["ifof", 1.4]])).toEqual([
      '3 findings for the whole route: show "findings".',
    ]);
  });

  test("a column that is not read, with a wind in it; a second column of a name; cautions of the whole route", () => {
    expect(text([...calm, "wnd"], [[...values, 8]])).toEqual(["Route: not read: wnd: was wind meant?"]);
    expect(text([...calm, "wind", "wind"], [[...values, 1, 8]])).toEqual([
      "Route: not read: column 18, a second wind.",
    ]);
    expect(text(calm, [values], [["check_error", 3]])).toEqual(["Route: field check: 3 K off."]);
    expect(text(["asset_id", "wnd"], [["", 8]])).toEqual(["Route: not read: wnd: was wind meant?"]);
  });

  test("is not told twice where a row tells it, nor where no row holds anything", () => {
    const job: Grid = [
      ["ifov", "1,4"],
      ["check_error", 3],
    ];
    expect(text(calm, [values], job)).toEqual(['Route: field check: 3 K off. Stop: job_ifov "1,4" is no number.']);
    expect(text(calm, [calm.map(() => null)], job)).toEqual([""]);
  });
});
