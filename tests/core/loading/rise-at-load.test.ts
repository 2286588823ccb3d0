import fc from "fast-check";
import { riseAtLoad } from "../../../src/core/loading/rise-at-load.js";
import { refusal } from "../../support/refusal.js";

const at = (rise: number, load: number, referenceLoad: number, exponent?: number, minimumLoad?: number): number =>
  riseAtLoad({ rise, load, referenceLoad, ...(exponent && { exponent }), ...(minimumLoad && { minimumLoad }) });

describe("rise at load", () => {
  // 12 K at 45 A, to 100 A, worked apart from this code.
  it.each([
    [1.6, 43.06],
    [1.8, 50.51],
    [2, 59.26],
  ])("12 K at 45 A is, at 100 A with n = %d, %d K", (exponent, expected) => {
    expect(Math.abs(at(12, 45, 100, exponent) - expected)).toBeLessThanOrEqual(0.01);
  });

  // Multipliers to full load, (1/share)^n, worked apart from this code.
  it.each([
    [1.6, [4.332, 3.031, 2.264, 1.769, 1.429, 1.184]],
    [1.8, [5.203, 3.482, 2.508, 1.9, 1.494, 1.209]],
    [2, [6.25, 4, 2.778, 2.041, 1.562, 1.235]],
  ])("multiplies from 40, 50 … 90 %% of the load, n = %d", (exponent, factors) => {
    for (const [i, factor] of factors.entries()) {
      expect(Math.abs(at(1, 0.4 + i / 10, 1, exponent) - factor)).toBeLessThanOrEqual(0.00051);
    }
  });

  it("takes n = 1.8 and 40 % where they are not given", () => {
    expect(at(12, 45, 100)).toBe(at(12, 45, 100, 1.8, 0.4));
    expect(refusal(() => at(12, 39.9, 100)).hint?.key).toBe("load-below-minimum");
  });

  it("answers at exactly the minimum, however the loads are written", () => {
    for (const reference of [1, 3, 7, 100, 250, 1234.5, 0.7]) {
      expect(at(10, reference * 0.4, reference)).toBeCloseTo(10 * 0.4 ** -1.8, 6);
      expect(at(10, reference * 0.1, reference, 2, 0.1)).toBeCloseTo(1000, 4);
    }
    expect(at(12, 40, 100, 2)).toBeCloseTo(75, 10);
  });

  it("is linear in the rise, goes down from any load and back again, and knows no unit of load", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        fc.double({ min: 1, max: 2.2, noNaN: true }),
        (rise, ratio, exponent) => {
          const value = at(rise, ratio * 80, 80, exponent);
          expect(at(2 * rise, ratio * 80, 80, exponent)).toBeCloseTo(2 * value, 8);
          expect(at(rise, ratio, 1, exponent)).toBeCloseTo(value, 8);
          expect(at(value, 80, ratio * 80, exponent)).toBeCloseTo(rise, 8);
          expect(ratio <= 1 ? value >= rise : value <= rise).toBe(true);
        },
      ),
    );
  });

  it("keeps a rise at the same load, and a rise of nothing", () => {
    expect(at(12.3, 77, 77)).toBe(12.3);
    expect(at(0, 45, 100)).toBe(0);
    expect(at(-0.5, 50, 100, 2)).toBe(-2);
  });

  it.each([
    ["a rise that is not a number", () => at(NaN, 45, 100), "INVALID", "rise", undefined],
    ["a load below 0", () => at(12, -45, 100), "INVALID", "load", undefined],
    ["a load that is not a number", () => at(12, Infinity, 100), "INVALID", "load", undefined],
    ["a reference of 0", () => at(12, 45, 0), "INVALID", "reference_load", undefined],
    ["a reference below 0", () => at(12, 45, -1), "INVALID", "reference_load", undefined],
    ["per cent against a fraction", () => at(12, 45, 1), "INVALID", "load", "per-cent-against-fraction"],
    ["a fraction against per cent", () => at(12, 0.45, 100), "INVALID", "load", "per-cent-against-fraction"],
    ["2.51 times the reference", () => at(12, 251, 100), "INVALID", "load", "per-cent-against-fraction"],
    ["an exponent below 1", () => at(12, 45, 100, 0.9), "INVALID", "exponent", undefined],
    ["an exponent above 2.5", () => at(12, 45, 100, 2.6), "INVALID", "exponent", undefined],
    ["a minimum in per cent", () => at(12, 45, 100, 1.8, 40), "INVALID", "minimum_load", "per-cent"],
    ["a minimum below a tenth", () => at(12, 45, 100, 1.8, 0.05), "INVALID", "minimum_load", undefined],
    ["35 % of the load", () => at(12, 35, 100), "REFUSED", "load", "load-below-minimum"],
    ["no current", () => at(12, 0, 100), "REFUSED", "load", "no-current"],
    ["colder than the air", () => at(-3.1, 50, 100), "REFUSED", "rise", "negative-rise"],
    ["a factor above 6.25", () => at(12, 40, 100, 2.14), "REFUSED", "load", "factor-too-large"],
  ])("refuses %s", (_, call, code, argument, hint) => {
    const error = refusal(call);
    expect(error).toMatchObject({ code, argument });
    expect(error.hint?.key).toBe(hint);
  });

  it("answers just inside what it refuses", () => {
    expect(at(12, 250, 100)).toBeCloseTo(12 * 2.5 ** -1.8, 10);
  });
});
