/** NFPA 70B-2023, Table 9.2.2, as two pages quote it: months between thermographic surveys by condition. */
import { DEFAULT_INTERVALS, intervalsNamed } from "../../src/core/plan/next-due.js";
import { expectPublished, publishedChecks } from "../support/rows.js";

describe("NFPA 70B-2023", () => {
  const checks = publishedChecks("70B-1", "70B-2", "70B-3");
  it("has its three conditions", () => {
    expect(checks).toHaveLength(3);
  });
  it.each(checks.map((check) => [check.title, check] as const))("%s", (_, check) => {
    const worst = Number(/worst condition=(\d)/.exec(check.inputs)?.[1]);
    expectPublished(check, intervalsNamed(DEFAULT_INTERVALS)[worst - 1] ?? NaN);
  });
});
