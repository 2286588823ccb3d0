import { MATERIALS } from "../../src/data/emissivity.js";
import type { PublishedCheck } from "./rows.js";
import { publishedChecks } from "./rows.js";

/** The checks of the published emissivities whose source begins so. */
export function emissivityChecks(source: string): PublishedCheck[] {
  return publishedChecks("EM-").filter((check) => check.source.startsWith(source));
}

/**
 * Fails unless the printed value or range (its middle, give or take its half width) and the total emissivity of our row
 * meet: tables of emissivity agree no better than that.
 */
export function expectMeets(check: PublishedCheck, material: string): void {
  const found = MATERIALS.find((one) => one.material === material)?.ranges.find(({ band }) => band === "total");
  expect(found).toBeDefined();
  expect(check.expected - check.tolerance).toBeLessThanOrEqual(found!.high + 1e-12);
  expect(check.expected + check.tolerance).toBeGreaterThanOrEqual(found!.low - 1e-12);
}
