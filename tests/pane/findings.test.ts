import { findingsOf } from "../../src/pane/check/findings.js";
import { columnOfNeed, whyNeeded } from "../../src/pane/check/needs.js";
import { routeTable } from "../support/route-table.js";

const told = (rows: Parameters<typeof routeTable>[0]) =>
  findingsOf(routeTable(rows), []).map(({ where, what, why }) => [where, what, why]);

test("an empty row is calm, whatever stands beside it", () => {
  expect(findingsOf(routeTable([{}, { needs: "status" }]), [])).toEqual([]);
});

test("what is missing says where it is typed and what it is needed for", () => {
  const { table, rows } = routeTable([{ asset_id: "Q3", needs: "current left, surrounding air" }]);
  const found = findingsOf({ table, rows }, []);
  const column = (key: string): number => table.columns.find((one) => one.key === key)!.column;
  expect(found.map(({ what }) => what)).toEqual(["Needs current left", "Needs surrounding air"]);
  expect(found[0]).toMatchObject({
    where: "Row 7, Q3",
    at: { sheet: "Route", row: 6, column: column("amps_left") },
  });
  expect(found[0]!.why).toContain("0 is a phase without");
  expect(found[1]!.at.column).toBe(column("surrounding_air"));
});

test("what every row lacks leads to the job's field while that is empty, then to the row", () => {
  const route = routeTable([{ asset_id: "Q3", needs: "reflected" }]);
  const at = { sheet: "Job", row: 40, column: 1 };
  const field = (value: number | null) => [{ name: "job_reflected", label: "Reflected, indoors", value, at }];
  expect(findingsOf(route, field(null))[0]!.at).toEqual(at);
  expect(findingsOf(route, field(22))[0]!.at.sheet).toBe("Route");
});

test("worst first: an error, a danger nobody was told of, a stop, a need, a caution; of alike ones the higher grade", () => {
  const found = findingsOf(
    routeTable([
      { asset_id: "A", cautions: "sun within 2 h", grade_found: "1 of 4: possible fault" },
      { asset_id: "B", cautions: "wind 3.0 m/s", grade_found: "4 of 4: serious fault" },
      { asset_id: "C", needs: "status" },
      { asset_id: "D", stops: "enclosed: what is seen has no grade" },
      { asset_id: "E", needs: "told_to: a grade 4 is told to the person responsible at once" },
      { asset_id: "F", left: { error: "#VALUE!", message: "left is not given." } },
    ]),
    [],
  );
  expect(found.map(({ where }) => where.at(-1))).toEqual(["F", "E", "D", "C", "B", "A"]);
  expect(found[0]!.why).toBe("left is not given.");
});

test("a clause with its reason is split into what and why; one without gets a plain why", () => {
  expect(
    told([{ asset_id: "A", cautions: "currents differ by 12 %: compared at the largest; sun within 2 h" }]),
  ).toEqual([
    ["Row 7, A", "Currents differ by 12 %", "Compared at the largest."],
    ["Row 7, A", "Sun within 2 h", "Calls for care; the numbers stand."],
  ]);
});

test("what cannot be leads to the cell it was typed in", () => {
  const { table, rows } = routeTable([{ asset_id: "A", stops: "emissivity 95: a number from 0.01 to 1" }]);
  const [found] = findingsOf({ table, rows }, []);
  expect(table.columns.find(({ column }) => column === found!.at.column)?.key).toBe("emissivity");
});

test.each([
  ...["reading left", "current right", "thermal image", "path air", "window temperature", "set emissivity"],
  ...["reading", "process load", "survey date in Job"],
])("the template's word %s has a column and a reason of its own", (need) => {
  expect(columnOfNeed(need)).not.toBe("remarks");
  expect(whyNeeded(need)).toMatch(/\.$/);
});
