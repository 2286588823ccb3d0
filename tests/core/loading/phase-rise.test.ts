import { GreybodyError } from "../../../src/core/errors.js";
import { phaseRise, type PhaseRiseInputs } from "../../../src/core/loading/phase-rise.js";
import { refusal } from "../../support/refusal.js";

const celsius = (t: number): number => t + 273.15;
const temps = [38, 55, 37].map(celsius);
const phases = (change: Partial<PhaseRiseInputs> = {}): (number | GreybodyError)[] =>
  phaseRise({ temps, loads: [62, 41, 60], surroundingAir: celsius(25), ...change });
const error = (value: number | GreybodyError | undefined): GreybodyError => {
  if (value instanceof GreybodyError) return value;
  throw new Error(`answered ${String(value)}`);
};

describe("phase rise", () => {
  // Worked apart from this code, as are the 45.1 and 50.2 K between phases.
  it.each([
    [1.6, [13, 58.14, 12.65], 45.1],
    [2, [13, 68.6, 12.81], undefined],
    [1.8, undefined, 50.2],
  ])("38, 55, 37 °C at 62, 41, 60 A over 25 °C, n = %d", (exponent, expected, difference) => {
    for (const values of [phases({ exponent }), phases({ exponent, commonLoad: 62 })]) {
      const [left = 0, middle = 0, right = 0] = values.map(Number);
      for (const [i, value] of (expected ?? []).entries())
        expect(Math.abs(Number(values[i]) - value)).toBeLessThanOrEqual(0.01);
      // Rounded to 0.1 K in the notes.
      if (difference) expect(Math.abs(middle - left - difference)).toBeLessThanOrEqual(0.051);
      expect(left).toBeGreaterThan(right);
    }
  });

  it("brings every phase to a common load that is given, down as well as up", () => {
    const values = phases({ commonLoad: 31, exponent: 2, minimumLoad: 0.5 }).map(Number);
    expect(values[0]).toBeCloseTo(13 / 4, 10);
    expect(values[1]).toBeCloseTo(30 * (31 / 41) ** 2, 10);
  });

  it("leaves equal loads as they are, for any number of phases", () => {
    expect(phases({ loads: [50, 50, 50] }).map(Number)).toEqual(temps.map((t) => t - celsius(25)));
    expect(phaseRise({ temps: [celsius(40)], loads: [10], surroundingAir: celsius(25) })).toEqual([15]);
    expect(phaseRise({ temps: [], loads: [], surroundingAir: celsius(25) })).toEqual([]);
  });

  it("names a phase without current, and keeps the others", () => {
    const values = phases({ loads: [62, 0, 60] });
    expect(error(values[1])).toMatchObject({ code: "REFUSED", argument: "loads", hint: { key: "no-current" } });
    expect(values[0]).toBeCloseTo(13, 10);
    expect(phases({ loads: [0, 0, 0] }).map((v) => error(v).hint?.key)).toEqual(Array(3).fill("no-current"));
  });

  it("tells a load or a temperature that is not given from 0, and keeps the others at their largest", () => {
    const values = phases({ loads: [undefined, 41, 60], temps: [...temps.slice(0, 2), undefined] });
    expect(error(values[0])).toMatchObject({
      code: "NOT_GIVEN",
      argument: "loads",
      hint: { key: "phase", values: { phase: 1 } },
    });
    expect(values[1]).toBeCloseTo(30 * (60 / 41) ** 1.8, 10);
    expect(error(values[2])).toMatchObject({ code: "NOT_GIVEN", argument: "temps" });
  });

  it("never lets one phase spoil another", () => {
    const values = phases({ temps: [celsius(38), celsius(20), -5], loads: [62, 60, 61] });
    expect(values[0]).toBeCloseTo(13, 10);
    expect(error(values[1])).toMatchObject({ code: "REFUSED", argument: "temps", hint: { key: "negative-rise" } });
    expect(error(values[2])).toMatchObject({ code: "INVALID", argument: "temps" });
    const bad = phases({ loads: [62, -41, NaN] });
    expect(bad[0]).toBeCloseTo(13, 10);
    expect(error(bad[1])).toMatchObject({ code: "INVALID", argument: "loads" });
    expect(error(bad[2])).toMatchObject({ code: "INVALID", argument: "loads" });
  });

  it("takes a light phase among its sisters for light, and against a given load for a slip", () => {
    expect(error(phases({ loads: [62, 1, 60] })[1]).hint?.key).toBe("load-below-minimum");
    expect(error(phases({ loads: [62, 24, 60] })[1]).hint?.key).toBe("load-below-minimum");
    expect(phases({ loads: [60, 24, 60] })[1]).toBeCloseTo(30 * 0.4 ** -1.8, 8);
    expect(phases({ commonLoad: 0.62 }).map((v) => error(v).hint?.key)).toEqual(
      Array(3).fill("per-cent-against-fraction"),
    );
  });

  it("refuses what holds for the whole set", () => {
    expect(refusal(() => phases({ loads: [62, 41] }))).toMatchObject({
      argument: "loads",
      hint: { key: "phases-do-not-fit" },
    });
    expect(refusal(() => phases({ commonLoad: 0 })).argument).toBe("common_load");
    expect(refusal(() => phases({ surroundingAir: NaN })).argument).toBe("surrounding_air");
    expect(refusal(() => phases({ exponent: 0 })).argument).toBe("exponent");
    expect(refusal(() => phases({ minimumLoad: 2 })).argument).toBe("minimum_load");
  });
});
