import { alternativeOf, dateInWords } from "../../src/pane/look/words.js";
import { bandsOf } from "../../src/pane/look/bands.js";
import { look } from "../../src/pane/look/points.js";
import { routeTable } from "../support/route-table.js";

const exception = {
  asset_id: "Q3",
  component: "feeder",
  status: "exception",
  view: "direct",
  similar: 30.04,
  grade_similar: "4 of 4: serious fault",
  u_similar: "more than ± 1.4 K, edge 15 K inside",
  governs: "over similar",
  judged_by: "over similar (NETA-100.18)",
  grade_found: "4 of 4: serious fault",
};

test("similar, air, limit and an indirect view never share an axis", () => {
  const rows = [
    {
      ...exception,
      ...{ rise_air: 41, grade_air: "4 of 4: serious fault" },
      ...{ share: 0.9, grade_limit: "2 of 4: plan", u_limit: "± 5 points, edge 90 % inside" },
      ...{ baseline: 12, grade_baseline: "2 of 4: clearly changed since its baseline" },
    },
    { ...exception, asset_id: "TX", view: "indirect" },
  ];
  const { points } = look(routeTable(rows));
  expect(points.map(({ axis, asset }) => [axis, asset]).sort()).toEqual([
    ["air", "Q3"],
    ["baseline", "Q3"],
    ["indirect", "TX"],
    ["limit", "Q3"],
    ["similar", "Q3"],
  ]);
  expect(points.find(({ axis }) => axis === "similar")).toMatchObject({ u: 1.4, governs: true, sheetRow: 7 });
  expect(points.find(({ axis }) => axis === "air")?.governs).toBe(false);
  // Points of a share are hundredths of it.
  expect(points.find(({ axis }) => axis === "limit")?.u).toBe(0.05);
});

test("a row without an exception is left out; an exception without a grade is told with its reason", () => {
  const { exceptions, points, ungraded } = look(
    routeTable([
      { asset_id: "A", status: "no exception", view: "direct", similar: 0.4, grade_similar: "0 of 4: none" },
      { asset_id: "B", status: "exception", view: "direct", remarks: "needs: surrounding air" },
    ]),
  );
  expect(exceptions).toBe(1);
  expect(points).toEqual([]);
  expect(ungraded).toEqual([{ row: 1, name: "B", why: "needs: surrounding air" }]);
});

// ANSI/NETA table 100.18 as in data/criteria: over a similar part from 1, from 4, above 15 K; times 1.8 in °F.
test("the bands are the criteria's, in the sheet's unit", () => {
  const edges = (units: "C" | "F") => bandsOf("similar", "NETA-100.18", units).map(({ from }) => from);
  expect(edges("C")).toEqual([1, 4, 15]);
  expect(edges("F")).toEqual([1.8, 7.2, 27]);
  expect(bandsOf("air", "NETA-100.18", "C").map(({ grade, from }) => [grade, from])).toEqual([
    [1, 1],
    [2, 11],
    [3, 21],
    [4, 40],
  ]);
  expect(bandsOf("limit", "house-limit", "F").map(({ from }) => from)).toEqual([0.75, 0.9, 1, 1.2]);
  // The house's ladder for a baseline: from 5, from 10, from 20 K.
  expect(bandsOf("baseline", "house", "C").map(({ grade, from }) => [grade, from])).toEqual([
    [1, 5],
    [2, 10],
    [4, 20],
  ]);
  // Watch, plan, act from 5, 10, 20 K over a like point of a machine, in °F times 1.8.
  expect(bandsOf("similar", "house-mechanical", "F").map(({ grade, from }) => [grade, from])).toEqual([
    [1, 9],
    [2, 18],
    [4, 36],
  ]);
  expect(bandsOf("baseline", "NETA-100.18", "C")).toEqual([]);
  expect(bandsOf("similar", "our own", "C")).toEqual([]);
});

test("the text alternative holds the numbers that matter", () => {
  const { points } = look(routeTable([exception]));
  expect(alternativeOf(points, "K")).toBe("Q3, feeder: 30.0 ± 1.4 K, 4 of 4: serious fault.");
});

test("a date of the sheet in words: 44927 is the first day of 2023", () => {
  expect(dateInWords(44_927)).toBe("2023-01-01");
});
