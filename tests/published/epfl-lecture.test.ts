/** Lecture on heat transfer (EPFL, Thome 2008), as quoted: total emissivities. */
import { emissivityChecks, expectMeets } from "../support/materials.js";
import { expectAll } from "../support/limits.js";

/** What our table calls the material of each check. */
const MATERIALS: Readonly<Record<string, string>> = {
  "EM-02": "copper, polished",
  "EM-08": "copper, slightly polished to dull",
  "EM-10": "aluminium, polished",
  "EM-14": "aluminium, strongly oxidised",
  "EM-17": "brass, dull, tarnished",
  "EM-18": "brass, oxidised",
  "EM-19": "steel, polished",
  "EM-26": "oil paint, any colour",
};
const checks = emissivityChecks("EPFL lecture");

it("every material of it that is ours stands here", () => {
  expectAll(checks, MATERIALS);
});
it.each(checks.map((check) => [check.title, check] as const))("%s", (_, check) => {
  expectMeets(check, MATERIALS[check.id]!);
});
