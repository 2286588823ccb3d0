import { nearest } from "../../src/host/embedded/nearest.js";

const names = ["CORRECTED", "APPARENT", "RADIANCE", "RADIANCE_TEMP"];

test("a mistyped word finds its neighbours, best first, without case", () => {
  expect(nearest("corected", names)).toEqual(["CORRECTED"]);
  expect(nearest("RADIENCE", names)).toEqual(["RADIANCE"]);
  expect(nearest("RADIANCE_TMP", names)).toEqual(["RADIANCE_TEMP", "RADIANCE"]);
});

test("what is far from all, or too short to tell, finds nothing", () => {
  expect(nearest("SUM", names)).toEqual([]);
  expect(nearest("f", ["FV", "N"])).toEqual([]);
});
