/** Automotive Aerodynamics, Table 11.3: total emissivities. */
import { emissivityChecks, expectMeets } from "../support/materials.js";
import { expectAll } from "../support/limits.js";

/** What our table calls the material of each check. */
const MATERIALS: Readonly<Record<string, string>> = {
  "EM-05": "copper, heavily oxidised",
  "EM-25": "lead, grey, oxidised",
  "EM-31": "concrete",
  "EM-32": "wood, planed",
  "EM-35": "water",
};
const checks = emissivityChecks("Automotive Aerodynamics");

it("every material of it that is ours stands here", () => {
  expectAll(checks, MATERIALS);
});
it.each(checks.map((check) => [check.title, check] as const))("%s", (_, check) => {
  expectMeets(check, MATERIALS[check.id]!);
});
