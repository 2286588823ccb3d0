/** Ede, Introduction to Heat Transfer, Table 1.1, as quoted: total emissivities. */
import { emissivityChecks, expectMeets } from "../support/materials.js";
import { expectAll } from "../support/limits.js";

/** What our table calls the material of each check. */
const MATERIALS: Readonly<Record<string, string>> = {
  "EM-03": "copper, polished",
  "EM-04": "copper, oxidised",
  "EM-16": "aluminium paint",
  "EM-21": "cast iron, polished",
  "EM-22": "cast iron, oxidised",
  "EM-24": "tinned sheet iron",
  "EM-30": "brick, red, rough",
  "EM-33": "paper, white",
  "EM-34": "carbon, lampblack or graphite",
};
const checks = emissivityChecks("Ede");

it("every material of it that is ours stands here", () => {
  expectAll(checks, MATERIALS);
});
it.each(checks.map((check) => [check.title, check] as const))("%s", (_, check) => {
  expectMeets(check, MATERIALS[check.id]!);
});
