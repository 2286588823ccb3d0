/** The same route in °F: the same grades and words, the same numbers converted. */
import { demoRoute } from "../../../src/templates/route/demo/route.js";
import { worked, type WorkedRoute } from "./fixture.js";

let celsius: WorkedRoute;
let fahrenheit: WorkedRoute;
beforeAll(async () => {
  [celsius, fahrenheit] = (await worked(demoRoute("C"), demoRoute("F"))) as [WorkedRoute, WorkedRoute];
});

const WORDS = [
  "hottest",
  "pattern",
  "currents",
  "grade_found",
  "judged_by",
  "finding",
  "criteria_action",
  "grade_similar",
  "grade_limit",
  "grade_air",
  "grade_full",
];

test.each(WORDS)("%s is the same", (key) => {
  expect(fahrenheit.columns[key]).toEqual(celsius.columns[key]);
});

function compare(key: string, convert: (value: number) => number): void {
  const own = fahrenheit.columns[key] ?? [];
  const numbers = (celsius.columns[key] ?? []).flatMap((value, row) =>
    typeof value === "number" ? [[value, own[row]] as const] : [],
  );
  expect(numbers.length).toBeGreaterThan(10);
  for (const [metric, imperial] of numbers) expect(imperial).toBeCloseTo(convert(metric), 1);
}

test.each(["corrected_left", "corrected_right", "limit_at_load"])("%s in °F", (key) => {
  compare(key, (value) => value * 1.8 + 32);
});

test.each(["rise_left", "rise_similar", "rise_lowest", "full_low"])("%s without the offset", (key) => {
  compare(key, (value) => value * 1.8);
});

test("uncertainties and edges are told in °F", () => {
  expect(fahrenheit.cell("MCC1-P4", "grade_found_u")).toBe("± 1.8 °F, edge 27 °F inside");
  expect(fahrenheit.errors).toEqual([]);
});
