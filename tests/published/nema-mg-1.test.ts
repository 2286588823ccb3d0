/** NEMA MG 1 as tabulated on a page of engineering tables: winding rises by resistance, insulation classes. */
import { expectAll, expectLimit } from "../support/limits.js";
import { publishedChecks } from "../support/rows.js";

/** What our table calls the part of each check, the figure and the standard. */
const PARTS: Readonly<Record<string, readonly [part: string, unit: "C" | "K", standard: string]>> = {
  "MG1-1.0-A": ["motor winding, class A, service factor 1.0", "K", "NEMA MG 1"],
  "MG1-1.0-B": ["motor winding, class B, service factor 1.0", "K", "NEMA MG 1"],
  "MG1-1.0-F": ["motor winding, class F, service factor 1.0", "K", "NEMA MG 1"],
  "MG1-1.0-H": ["motor winding, class H, service factor 1.0", "K", "NEMA MG 1"],
  "MG1-1.15-A": ["motor winding, class A, service factor 1.15", "K", "NEMA MG 1"],
  "MG1-1.15-B": ["motor winding, class B, service factor 1.15", "K", "NEMA MG 1"],
  "MG1-1.15-F": ["motor winding, class F, service factor 1.15", "K", "NEMA MG 1"],
  "MG1-max-A": ["motor insulation, class A", "C", "NEMA MG 1"],
  "MG1-max-B": ["motor insulation, class B", "C", "NEMA MG 1"],
  "MG1-max-F": ["motor insulation, class F", "C", "NEMA MG 1"],
  "MG1-max-H": ["motor insulation, class H", "C", "NEMA MG 1"],
};
const checks = publishedChecks("MG1-1", "MG1-max");

describe("NEMA MG 1", () => {
  it("stands in our table whole", () => {
    expectAll(checks, PARTS);
  });
  it.each(checks.map((check) => [check.title, check] as const))("%s", (_, check) => {
    expectLimit(check, ...PARTS[check.id]!);
  });
});
