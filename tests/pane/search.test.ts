/** The search of the functions' list: who types a name finds that function first; columns of a range are found too. */
import { catalogue } from "../../src/functions/catalogue.js";
import { byTopic, searchFunctions } from "../../src/pane/functions/search.js";

const found = (wanted: string): string[] => searchFunctions(catalogue, wanted).map(({ name }) => name);

test.each([
  ["uncertainty", "UNCERTAINTY"],
  ["monte carlo", "MONTE_CARLO"],
  ["MONTE_CARLO", "MONTE_CARLO"],
  ["grey.check", "CHECK"],
  ["reflected mix", "REFLECTED_MIX"],
  ["trend", "TREND"],
])("%s: %s comes first, its topic too", (wanted, name) => {
  expect(found(wanted)[0]).toBe(name);
  expect(byTopic(searchFunctions(catalogue, wanted))[0]?.[1][0]?.name).toBe(name);
});

test("words of a column find the function that takes it; no word finds all, in the catalogue's order", () => {
  expect(found("hours_since_sun")).toContain("CHECK");
  expect(found(" ")).toEqual(catalogue.map(({ name }) => name));
  expect(found("zzqx")).toEqual([]);
});
