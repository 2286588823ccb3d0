/** What the audit functions tell: tables, words, what they refuse. */
import { RISE_SLIPS } from "../../src/core/audit/rise-slips.js";
import type { Cell, CellError, FunctionSpec, Grid, Input } from "../../src/functions/contract.js";
import { isCellError } from "../../src/functions/contract.js";
import { EXPLAIN } from "../../src/functions/explain.js";
import { EXPLAIN_REPORT } from "../../src/functions/explain-report.js";
import { EXPLAIN_RISE } from "../../src/functions/explain-rise.js";
import { RISE_SLIP_WORDS, TEMPERATURE_SLIP_WORDS } from "../../src/functions/slip-words.js";
import { seeded } from "../support/slips.js";

function fault(spec: FunctionSpec, ...inputs: Input[]): CellError {
  const cell = spec.evaluate(inputs)[0]?.[0];
  if (!isCellError(cell)) throw new Error(`no error but ${String(cell)}`);
  return cell;
}
const rowOf = (table: Grid, slip: string): readonly Cell[] => table.find(([first]) => first === slip) ?? [];

/** 80 °C through a window of 0.55, emissivity 0.95, all at 25 °C, 8-14 µm: 56.49, for the surface alone 57.95. */
const WINDOW: Grid = [[56.49, 0.95, 25, 1, 25, 0.55, 25]];
const WINDOW_F: Grid = [[133.682, 0.95, 77, 1, 77, 0.55, 77]];

describe("GREY.EXPLAIN", () => {
  const table = EXPLAIN.evaluate([57.95, WINDOW, undefined, "8-14"]);

  it("has the settings as stated first, then the best match", () => {
    expect(table[0]).toEqual(["slip", "gives", "difference", "matches", "chance"]);
    expect(table[1]?.[0]).toBe("as stated");
    expect(table[1]?.[1]).toBeCloseTo(80, 1);
    expect(table[1]?.[3]).toBe("no");
    expect(table[2]?.[0]).toBe("window left out");
    expect(table[2]?.[1]).toBeCloseTo(57.95, 2);
    expect(table[2]?.[3]).toBe("yes");
  });

  it("says what would not show: the whole window in one emissivity where all is at one temperature", () => {
    expect(rowOf(table, "emissivity × window transmission as one emissivity")[3]).toBe("would not show");
    expect(rowOf(table, "reflected temperature taken as the air's")[3]).toBe("would not show");
  });

  it("gives the same in °F: temperatures with the 32, differences without", () => {
    const inF = EXPLAIN.evaluate([136.31, WINDOW_F, undefined, "8-14", "table", "F"]);
    for (const slip of ["as stated", "window left out", "corrected twice", "the band 3-5 µm"]) {
      const [, gives = NaN, difference = NaN, matches] = rowOf(table, slip);
      const [, givesF, differenceF, matchesF] = rowOf(inF, slip);
      expect(givesF).toBeCloseTo(Number(gives) * 1.8 + 32, 6);
      expect(differenceF).toBeCloseTo(Number(difference) * 1.8, 6);
      expect(matchesF).toBe(matches);
    }
    // A bare number of the sheet over the emissivity: 133.682/0.95.
    expect(rowOf(inF, "reading / emissivity, in degrees")[1]).toBeCloseTo(140.717895, 5);
    expect(rowOf(inF, "reading / emissivity, in °C")[1]).toBeCloseTo((56.49 / 0.95) * 1.8 + 32, 5);
  });

  it("tells the best match in words that claim no more than it would give", () => {
    const said = EXPLAIN.evaluate([57.95, WINDOW, undefined, "8-14", "slip"])[0]?.[0];
    expect(said).toMatch(/^window left out would give it \(by chance one matches [\d.]+ % of values\)$/);
    // Without air and window emissivity 1 is the reading itself: two slips, one value.
    const two = EXPLAIN.evaluate([58, [[58, 0.85, 22]], undefined, undefined, "slip"])[0]?.[0];
    expect(two).toMatch(/^the reading itself, not corrected would give it; so would 1 other \(/);
    expect(EXPLAIN.evaluate([58, [[58, 0.85, 22]], undefined, undefined, "count"])).toEqual([[2]]);
  });

  it("has no word of certainty among its slips", () => {
    for (const words of [...Object.values(TEMPERATURE_SLIP_WORDS), ...Object.values(RISE_SLIP_WORDS)]) {
      expect(words).not.toMatch(/\b(is|was|are|were|error|wrong\b(?! way))/);
    }
  });

  it("writes temperatures in both units, in a sheet of °F too", () => {
    for (const words of Object.values(TEMPERATURE_SLIP_WORDS)) {
      const degrees = [...words.matchAll(/-?\d+(?:\.\d+)? °([CF])/g)].map(([, unit]) => unit);
      // 273.15 and 459.67 are numbers added to others, no temperatures.
      if (degrees.length > 0 && !/added to|taken from/.test(words)) expect([...degrees].sort()).toEqual(["C", "F"]);
    }
    const inF = EXPLAIN.evaluate([136.31, WINDOW_F, undefined, "8-14", "table", "F"]);
    expect(rowOf(inF, "reflected temperature 20 °C (68 °F)")[1]).toEqual(expect.any(Number));
    expect(rowOf(inF, "reflected temperature 0 °F (−17.8 °C)")[1]).toEqual(expect.any(Number));
  });

  it("explains a reading that no object gives under the settings as stated", () => {
    // A black surface at -20 °C, stated as read; of an emissivity of 0.3 the surroundings alone show more.
    const cold = EXPLAIN.evaluate([-20, [[-20, 0.3, 30]]]);
    expect(cold[1]).toEqual(["as stated", "no answer", "", "no", ""]);
    expect(cold[2]?.slice(0, 4)).toEqual(["the reading itself, not corrected", -20, 0, "yes"]);
  });

  it("refuses what it cannot use, by the cell it is about", () => {
    const settings: Grid = [[58, 0.95, 22]];
    expect(fault(EXPLAIN, -300, settings).message).toMatch(/^stated: -300 °C cannot be\. Allowed: /);
    expect(fault(EXPLAIN, [[60], [61]], settings).message).toBe("stated: one value is wanted, here are 2 cells.");
    expect(fault(EXPLAIN, 60, [[58, 95, 22]]).message).toMatch(/^emissivity: 95 cannot be\. .*0\.95\?/);
    expect(fault(EXPLAIN, 60, [[58, 0.95, 22, 0.9]]).message).toMatch(/^air_temp is not given\./);
    expect(fault(EXPLAIN, 60, [[58, 0.95]]).message).toMatch(/^settings: 2 columns cannot be\. Allowed: 3 to 10/);
    expect(fault(EXPLAIN, 60, [...settings, ...settings]).message).toMatch(/^settings: 2 rows .* EXPLAIN_REPORT/);
    expect(fault(EXPLAIN, 60, settings, 11).message).toMatch(
      /^tolerance: 11 K cannot be\. Allowed: above 0, up to 10 K/,
    );
    const bands = [["8-14"], ["3-5"]];
    expect(fault(EXPLAIN, 60, settings, undefined, bands).message).toBe("band: one value is wanted, here are 2 cells.");
    expect(fault(EXPLAIN, 60, settings, undefined, "8-14", "table", [["C", "F"]]).message).toMatch(/^units: one call/);
    expect(fault(EXPLAIN, 60, settings, undefined, "8-14", "table", "K").message).toMatch(/^units: "K" cannot be/);
  });
});

describe("GREY.EXPLAIN_REPORT", () => {
  const stated: Grid = [[57.95], [""], [45.45], [39.39]];
  const settings: Grid = [56.49, 0, 44.5, 38.71].map((reading) => [reading, 0.95, 25, 1, 25, 0.55, 25]);

  it("passes over rows without a stated value, whatever the settings there hold", () => {
    const told = EXPLAIN_REPORT.evaluate([
      stated,
      settings.map((row, i) => (i === 1 ? row.map(() => "n/a") : row)),
      0.02,
      "8-14",
    ]);
    expect(told[1]?.slice(0, 3)).toEqual(["window left out", 3, 3]);
    expect(Math.abs(Number(told[1]?.[3]))).toBeLessThan(0.02);
    expect(told[2]?.slice(0, 3)).toEqual(["as stated", 0, 3]);
    // 57.95 − 80, 45.45 − 60, 39.39 − 50: the median.
    expect(told[2]?.[3]).toBeCloseTo(45.45 - 60, 1);
  });

  it("passes over rows that Excel hands over as zeros", () => {
    const zeros = EXPLAIN_REPORT.evaluate([[...stated, [0]], [...settings, [0, 0, 0, 0, 0, 0, 0]], 0.02, "8-14"]);
    expect(zeros).toEqual(EXPLAIN_REPORT.evaluate([stated, settings, 0.02, "8-14"]));
  });

  it("names the row of a fault, and lets an error through that came in", () => {
    const bad = settings.map((row, i) => (i === 2 ? [44.5, 95, 25, 1, 25, 0.55, 25] : row));
    expect(fault(EXPLAIN_REPORT, stated, bad).message).toMatch(/^emissivity: 95 cannot be\. .* It is in row 3\.$/);
    expect(fault(EXPLAIN_REPORT, [[57.95], [""], ["hot"], [39.39]], settings).message).toMatch(
      /^stated: "hot" cannot be\. .* It is in row 3\.$/,
    );
    const came: CellError = { error: "#REF!", message: "gone" };
    expect(fault(EXPLAIN_REPORT, [[57.95], [""], [came], [39.39]], settings)).toEqual(came);
  });

  it("refuses ranges that do not fit, and a report of nothing", () => {
    expect(fault(EXPLAIN_REPORT, stated, settings.slice(1)).message).toBe(
      "stated has 4 rows, settings 3: give a row of settings for each.",
    );
    expect(fault(EXPLAIN_REPORT, [[57.95, 45.45]], settings.slice(0, 1)).message).toMatch(/^stated: 2 columns/);
    expect(fault(EXPLAIN_REPORT, [[""], [null]], settings.slice(0, 2)).message).toMatch(/^stated is not given\./);
  });

  it("puts the settings as stated first where they reproduce more rows than a slip that chance may have made", () => {
    const told = EXPLAIN_REPORT.evaluate([[[79.99], [60], [39.39]], settings.filter((_, i) => i !== 1), 0.02, "8-14"]);
    expect(told[1]?.slice(0, 3)).toEqual(["as stated", 2, 3]);
    expect(told[2]?.slice(0, 3)).toEqual(["window left out", 1, 3]);
  });
});

describe("GREY.EXPLAIN_RISE", () => {
  const temps: Grid = [[38, 55, 37]];
  const loads: Grid = [[62, 41, 60]];
  const rise = (stated: Cell, ...rest: Input[]): Grid => EXPLAIN_RISE.evaluate([stated, temps, loads, 25, ...rest]);

  it("takes temperatures and loads as rows or columns", () => {
    const columns = EXPLAIN_RISE.evaluate([17.5, [[38], [55], [37]], [[62], [41], [60]], 25]);
    expect(columns).toEqual(rise(17.5));
    expect(rowOf(columns, "not adjusted for load").slice(1, 4)).toEqual([17.5, 0, "yes"]);
  });

  it("reads one load more as the load that the rise is brought to", () => {
    // 13·(100/62)^1.8 = 30.735.
    const table = EXPLAIN_RISE.evaluate([30.7, [[58, 45]], [[62, 60, 100]], 25]);
    expect(table[2]?.slice(0, 1)).toEqual(["the difference scaled in place of each rise"]);
    expect(table[2]?.[1]).toBeCloseTo(30.735, 3);
  });

  it("gives differences in °F without the 32", () => {
    const inF = EXPLAIN_RISE.evaluate([31.5, [[100.4, 131, 98.6]], loads, 77, undefined, undefined, "F"]);
    const [, gives, difference, matches] = rowOf(inF, "not adjusted for load");
    expect(gives).toBeCloseTo(31.5, 9);
    expect(difference).toBeCloseTo(0, 9);
    expect(matches).toBe("yes");
  });

  it("refuses what it cannot use, by the cell it is about", () => {
    const message = (...inputs: Input[]): string => fault(EXPLAIN_RISE, ...inputs).message;
    expect(message(17.5, [[38, 55, 37, 36]], loads, 25)).toMatch(/4 temperatures: give two, the hot one and its ref/);
    expect(message(17.5, temps, [[62, 41]], 25)).toMatch(/2 loads for 3 temperatures: give one for each/);
    expect(message(17.5, temps, [[62, -41, 60]], 25)).toMatch(/^loads: -41 cannot be\. Allowed: 0 to 500000\./);
    expect(
      message(
        17.5,
        [
          [38, 55],
          [37, 36],
        ],
        loads,
        25,
      ),
    ).toBe("temps: 2 × 2 cells cannot be. Allowed: one row or one column.");
    expect(message(17.5, [[38, null, 37]], loads, 25)).toMatch(/^temps is not given\./);
    expect(message(17.5, temps, loads, 90)).toMatch(/^surrounding_air: 90 °C cannot be\./);
  });

  it("finds a slip by chance as often as it says", () => {
    const random = seeded(31);
    let matched = 0;
    let expected = 0;
    const draws = 1000;
    for (let count = 0; count < draws; count++) {
      const right = 10 + 30 * random();
      const warm = [30 + 5 * random(), 30 + right + 5 * random(), 30 + 5 * random()];
      const currents = [40 + 60 * random(), 40 + 60 * random(), 40 + 60 * random()];
      const [, own = []] = EXPLAIN_RISE.evaluate([right, [warm], [currents], 25]);
      const drawn = Number(own[1]) + (random() * 2 - 1) * 20;
      const table = EXPLAIN_RISE.evaluate([drawn, [warm], [currents], 25]);
      matched += table.some(([, , , matches]) => matches === "yes") ? 1 : 0;
      expected += Number(table.at(-1)?.[4]);
    }
    expect(Math.abs(matched - expected) / draws).toBeLessThanOrEqual(0.02);
  });

  it("has words for every slip, no two the same", () => {
    expect(Object.keys(RISE_SLIP_WORDS).sort()).toEqual(["as-stated", ...RISE_SLIPS.map(({ key }) => key)].sort());
    for (const words of [RISE_SLIP_WORDS, TEMPERATURE_SLIP_WORDS].map(Object.values<string>)) {
      expect(new Set(words).size).toBe(words.length);
    }
  });
});
