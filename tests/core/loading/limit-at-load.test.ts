import { limitAtLoad, type LimitAtLoadInputs } from "../../../src/core/loading/limit-at-load.js";
import { shareOfLimit } from "../../../src/core/loading/share-of-limit.js";
import { refusal } from "../../support/refusal.js";

const celsius = (t: number): number => t + 273.15;
const limit = (change: Partial<LimitAtLoadInputs> = {}): number =>
  limitAtLoad({ ratedRise: 65, load: 120, ratedLoad: 200, surroundingAir: celsius(28), ...change }) - 273.15;

describe("limit at load", () => {
  // Worked apart from this code.
  it.each([
    [1.6, 56.7],
    [1.8, 53.92],
    [2, 51.4],
  ])("65 K at 120 of 200 A in air of 28 °C, n = %d: %d °C", (exponent, expected) => {
    expect(Math.abs(limit({ exponent }) - expected)).toBeLessThanOrEqual(0.01);
  });

  it("is air and permitted rise at the rated load, and n = 1.8 where not given", () => {
    expect(limit({ load: 200 })).toBeCloseTo(93, 10);
    expect(limit()).toBe(limit({ exponent: 1.8, minimumLoad: 0.4 }));
  });

  it("never exceeds the highest temperature", () => {
    expect(limit({ maximumTemp: celsius(50) })).toBeCloseTo(50, 10);
    expect(limit({ maximumTemp: celsius(105) })).toBe(limit());
    expect(limit({ load: 300, maximumTemp: celsius(105) })).toBeCloseTo(105, 10);
  });

  it("needs a highest temperature above the rated load or in air above 40 °C", () => {
    expect(limit({ load: 200, surroundingAir: celsius(40) })).toBeCloseTo(105, 10);
    expect(limit({ load: 0.1 * 3, ratedLoad: 0.3 })).toBeCloseTo(93, 6);
    expect(refusal(() => limit({ load: 201 }))).toMatchObject({
      code: "REFUSED",
      argument: "maximum_temp",
      hint: { key: "overload-needs-maximum" },
    });
    expect(refusal(() => limit({ surroundingAir: celsius(40.1) }))).toMatchObject({
      code: "REFUSED",
      argument: "maximum_temp",
      hint: { key: "hot-air-needs-maximum" },
    });
    expect(limit({ surroundingAir: celsius(45), maximumTemp: celsius(105) })).toBeCloseTo(45 + 65 * 0.6 ** 1.8, 8);
  });

  it.each([
    ["a rise of 0", { ratedRise: 0 }, "INVALID", "rated_rise", undefined],
    ["a rise that is not a number", { ratedRise: NaN }, "INVALID", "rated_rise", undefined],
    ["a rated load of 0", { ratedLoad: 0 }, "INVALID", "rated_load", undefined],
    ["per cent against a fraction", { load: 60, ratedLoad: 1 }, "INVALID", "load", "per-cent-against-fraction"],
    ["air that cannot be", { surroundingAir: celsius(80) }, "INVALID", "surrounding_air", undefined],
    ["an exponent above 2.5", { exponent: 3 }, "INVALID", "exponent", undefined],
    ["a highest temperature below absolute zero", { maximumTemp: -1 }, "INVALID", "maximum_temp", "absolute-zero"],
    ["30 % of the load", { load: 60 }, "REFUSED", "load", "load-below-minimum"],
    ["no current", { load: 0 }, "REFUSED", "load", "no-current"],
    [
      "a highest temperature that the air has",
      { maximumTemp: celsius(28) },
      "REFUSED",
      "maximum_temp",
      "limit-not-above-air",
    ],
  ])("refuses %s", (_, change, code, argument, hint) => {
    const error = refusal(() => limit(change));
    expect(error).toMatchObject({ code, argument });
    expect(error.hint?.key).toBe(hint);
  });
});

describe("share of limit", () => {
  const share = (temp: number, permitted: number, air: number): number =>
    shareOfLimit({ temp: celsius(temp), limit: celsius(permitted), surroundingAir: celsius(air) });

  it("is 0 at the air, 1 at the limit, above it above the limit, below 0 below the air", () => {
    expect(share(25, 90, 25)).toBe(0);
    expect(share(90, 90, 25)).toBe(1);
    expect(share(57.5, 90, 25)).toBeCloseTo(0.5, 12);
    expect(share(103, 90, 25)).toBeCloseTo(1.2, 12);
    expect(share(22, 90, 25)).toBeLessThan(0);
  });

  it("refuses a limit that is not above the air, and what cannot be", () => {
    expect(refusal(() => share(50, 25, 25))).toMatchObject({
      code: "REFUSED",
      argument: "limit",
      hint: { key: "limit-not-above-air" },
    });
    expect(refusal(() => share(NaN, 90, 25))).toMatchObject({ code: "INVALID", argument: "temp" });
    expect(refusal(() => share(50, -300, 25))).toMatchObject({ code: "INVALID", argument: "limit" });
    expect(refusal(() => share(50, 90, 66))).toMatchObject({ code: "INVALID", argument: "surrounding_air" });
  });
});
