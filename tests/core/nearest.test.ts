import { nearest, nearestByWord } from "../../src/core/nearest.js";

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

describe("names of several words", () => {
  const materials = ["copper, polished", "copper, oxidised", "aluminium, polished", "PVC, sheet or cable"];

  test("every word asked for counts, in any order and any case", () => {
    expect(nearestByWord("Copper", materials)).toEqual(["copper, polished", "copper, oxidised"]);
    expect(nearestByWord("polished copper", materials)).toEqual(["copper, polished"]);
    expect(nearestByWord("oxidized copper", materials)).toEqual(["copper, oxidised"]);
    expect(nearestByWord("aluminum", materials)).toEqual(["aluminium, polished"]);
  });

  test("one word is better than none, and nothing near is nothing", () => {
    expect(nearestByWord("PVC pipe", materials)).toEqual(["PVC, sheet or cable"]);
    expect(nearestByWord("unobtainium", materials)).toEqual([]);
    expect(nearestByWord("", materials)).toEqual([]);
  });

  test("no more than are asked for", () => {
    expect(nearestByWord("polished", materials, 1)).toEqual(["copper, polished"]);
  });
});
