import fc from "fast-check";
import { relativeRise, type RelativeRiseInputs } from "../../../src/core/loading/relative-rise.js";
import { refusal } from "../../support/refusal.js";

const celsius = (t: number): number => t + 273.15;
const relative = (hot: number, normal: number, air: number, change: Partial<RelativeRiseInputs> = {}): number =>
  relativeRise({ hot: celsius(hot), normal: celsius(normal), surroundingAir: celsius(air), ...change });

describe("relative rise", () => {
  it("does not depend on the load, to first order", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 1, noNaN: true }), (ratio) => {
        const factor = ratio ** 1.8;
        expect(relative(25 + 53 * factor, 25 + 21 * factor, 25)).toBeCloseTo((53 - 21) / 53, 10);
      }),
    );
  });

  it("answers at exactly 10 K, whatever the temperatures", () => {
    for (let tenths = -300; tenths <= 500; tenths++) {
      const air = tenths / 10;
      expect(relative((tenths + 100) / 10, air, air)).toBeCloseTo(1, 9);
    }
  });

  it("answers at exactly 2 K below the air and at 10 % between the loads", () => {
    expect(relative(40, 23, 25)).toBeCloseTo(17 / 15, 12);
    expect(relative(78, 46, 25, { hotLoad: 110, normalLoad: 100 })).toBeCloseTo(32 / 53, 12);
    expect(relative(78, 46, 25, { hotLoad: 0.9 * 0.7, normalLoad: 0.7 })).toBeCloseTo(32 / 53, 12);
    expect(relative(78, 46, 25, { hotLoad: 500 })).toBeCloseTo(32 / 53, 12);
  });

  it("takes two like readings for no difference", () => {
    expect(relative(40, 40, 25)).toBe(0);
    expect(relative(40, 40.8, 25)).toBeLessThan(0);
  });

  it.each([
    ["hot less than 10 K over the air", () => relative(34.9, 30, 25), "REFUSED", "hot", "rise-below-floor"],
    ["normal more than 2 K below the air", () => relative(40, 22.9, 25), "REFUSED", "normal", "normal-below-air"],
    ["hot and normal swapped", () => relative(46, 78, 25), "REFUSED", "hot", "hot-below-normal"],
    [
      "loads 11 % apart",
      () => relative(78, 46, 25, { hotLoad: 111, normalLoad: 100 }),
      "REFUSED",
      "hot_load",
      "loads-differ",
    ],
    [
      "loads 11 % apart downward",
      () => relative(78, 46, 25, { hotLoad: 89, normalLoad: 100 }),
      "REFUSED",
      "hot_load",
      "loads-differ",
    ],
    [
      "no current on hot",
      () => relative(78, 46, 25, { hotLoad: 0, normalLoad: 100 }),
      "REFUSED",
      "hot_load",
      "no-current",
    ],
    [
      "no current on normal",
      () => relative(78, 46, 25, { hotLoad: 9, normalLoad: 0 }),
      "REFUSED",
      "normal_load",
      "no-current",
    ],
    ["a load below 0", () => relative(78, 46, 25, { normalLoad: -1 }), "INVALID", "normal_load", undefined],
    ["hot that is not a number", () => relative(NaN, 46, 25), "INVALID", "hot", undefined],
    ["normal below absolute zero", () => relative(78, -280, 25), "INVALID", "normal", "absolute-zero"],
    ["air that cannot be", () => relative(178, 146, 125), "INVALID", "surrounding_air", undefined],
  ])("refuses %s", (_, call, code, argument, hint) => {
    const error = refusal(call);
    expect(error).toMatchObject({ code, argument });
    expect(error.hint?.key).toBe(hint);
  });
});
