/** Mechanical Engineers' Handbook, vol. 4, Table 19 (300 K, after Holman): total emissivities. */
import { emissivityChecks, expectMeets } from "../support/materials.js";
import { expectAll } from "../support/limits.js";

/** What our table calls the material of each check. */
const MATERIALS: Readonly<Record<string, string>> = {
  "EM-01": "copper, polished",
  "EM-06": "copper, in service, tarnished",
  "EM-09": "aluminium, polished",
  "EM-20": "cast iron, polished",
  "EM-27": "lacquer, white",
  "EM-28": "lacquer, black, matt",
  "EM-29": "brick, red, rough",
};
const checks = emissivityChecks("Mechanical Engineers' Handbook");

it("every material of it that is ours stands here", () => {
  expectAll(checks, MATERIALS);
});
it.each(checks.map((check) => [check.title, check] as const))("%s", (_, check) => {
  expectMeets(check, MATERIALS[check.id]!);
});
