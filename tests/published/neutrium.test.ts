/** A page of engineering tables (neutrium.net): total normal emissivities. */
import { emissivityChecks, expectMeets } from "../support/materials.js";
import { expectAll } from "../support/limits.js";

/** What our table calls the material of each check. */
const MATERIALS: Readonly<Record<string, string>> = {
  "EM-11": "aluminium, polished",
  "EM-12": "aluminium, sheet as received",
  "EM-13": "aluminium, strongly oxidised",
  "EM-15": "aluminium, anodised sheet",
};
const checks = emissivityChecks("neutrium");

it("every material of it that is ours stands here", () => {
  expectAll(checks, MATERIALS);
});
it.each(checks.map((check) => [check.title, check] as const))("%s", (_, check) => {
  expectMeets(check, MATERIALS[check.id]!);
});
