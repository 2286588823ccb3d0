/** TREND: which values count, what each show gives, and what it refuses. The series are invented. */
import type { Cell, Input } from "../../src/functions/contract.js";
import { call, errorIn, specOf, type Given } from "./fixture.js";

const DATES = [[45000], [45180], [45365], [45550], [45730]];
const RISING = [[12], [13.1], [14.4], [15.2], [16.5]];
const SCATTERED = [[12], [13], [11], [14], [12]];
/** By SciPy: linregress, t.ppf(0.975, 3) and the band of the line solved for 20 by brentq; 365.25 days a year. */
const SCIPY = {
  slope: 2.21505747984473,
  uncertainty: 0.2719828787082259,
  start: 12.026458644371473,
  crossing: 46314.79025110783,
  low: 46206.66795759273,
  high: 46451.99081213602,
};

const show = (what: string, given: Given = {}): Cell =>
  call(specOf("TREND"), { dates: DATES, values: RISING, limit: 20, show: what, ...given })[0]?.[0] ?? null;
const message = (what: string, given: Given = {}): string => errorIn([[show(what, given)]])?.message ?? "";
const code = (what: string, given: Given = {}): string => errorIn([[show(what, given)]])?.error ?? "answers";

describe("GREY.TREND", () => {
  it("gives the line of another library", () => {
    expect(show("slope")).toBeCloseTo(SCIPY.slope, 9);
    expect(show("uncertainty")).toBeCloseTo(SCIPY.uncertainty, 9);
    expect(show("start")).toBeCloseTo(SCIPY.start, 9);
    expect(show("crossing")).toBeCloseTo(SCIPY.crossing, 5);
    expect(show("crossing_low")).toBeCloseTo(SCIPY.low, 4);
    expect(show("crossing_high")).toBeCloseTo(SCIPY.high, 4);
    expect(show("verdict")).toBe("rising");
  });

  it("spills what a row of shows asks for", () => {
    const found = call(specOf("TREND"), { dates: DATES, values: RISING, show: [["slope", "start", "verdict"]] });
    expect(found).toEqual([[show("slope"), show("start"), "rising"]]);
  });

  it("takes rows as well as columns, in any order of dates", () => {
    const flat = { dates: [DATES.flat()], values: [RISING.flat()] };
    expect(show("slope", flat)).toBe(show("slope"));
    const turned = { dates: [...DATES].reverse(), values: [...RISING].reverse() };
    for (const what of ["slope", "start", "crossing"]) expect(show(what, turned)).toBeCloseTo(Number(show(what)), 6);
  });

  it("leaves out pairs with an empty cell, a date of 0 among them, as Excel hands it over", () => {
    const gaps = (dates: Input[], values: Input[]): Given => ({
      dates: [...DATES, ...dates.map((one) => [one])] as Input,
      values: [...RISING, ...values.map((one) => [one])] as Input,
    });
    for (const given of [gaps([null, 45800], [99, null]), gaps([0, "", 45800], [99, 1, ""])]) {
      expect(show("slope", given)).toBe(show("slope"));
    }
  });

  it("falls, or does not change beyond its uncertainty", () => {
    expect(show("verdict", { values: RISING.map(([value = 0]) => [-value]) })).toBe("falling");
    expect(show("verdict", { values: SCATTERED })).toBe("no change beyond uncertainty");
    // What one coverage takes for a change another does not.
    const doubtful = { values: [[12], [14], [13], [15], [14]] };
    expect(show("verdict", { ...doubtful, coverage: 0.5 })).toBe("rising");
    expect(show("verdict", { ...doubtful, coverage: 0.99 })).toBe("no change beyond uncertainty");
  });

  it("says of a limit whether it has been passed", () => {
    expect(show("verdict", { limit: 20 })).toBe("rising");
    expect(show("verdict", { limit: 16 })).toBe("rising, limit passed");
    expect(show("verdict", { limit: 10 })).toBe("rising, limit passed");
    const falling = { values: RISING.map(([value = 0]) => [30 - value]) };
    expect(show("verdict", { ...falling, limit: 15 })).toBe("falling, limit passed");
    // Below a limit from above all along, or on the way to it.
    for (const limit of [20, 12]) expect(show("verdict", { ...falling, limit })).toBe("falling");
    expect(show("verdict", { values: SCATTERED, limit: 11 })).toBe("no change beyond uncertainty");
  });

  it("refuses days on which no survey was, as NEXT_DUE does", () => {
    const exchanged = { dates: RISING, values: DATES };
    expect(message("slope", exchanged)).toMatch(
      /^dates: 12 cannot be\. Allowed: 29221 to 109574\. .*Are dates and values exchanged\?$/,
    );
    expect(code("slope", { dates: [[29220], ...DATES.slice(1)] })).toBe("#VALUE!");
    expect(code("slope", { dates: [[29221], ...DATES.slice(1)] })).toBe("answers");
    expect(code("slope", { dates: [...DATES.slice(1), [109574]] })).toBe("answers");
    expect(code("slope", { dates: [...DATES.slice(1), [109575]] })).toBe("#VALUE!");
  });

  it("refuses in words what has no slope", () => {
    const three = { dates: DATES.slice(0, 2), values: RISING.slice(0, 2) };
    expect(message("slope", three)).toBe("2 dated values: a slope with its uncertainty takes at least 3.");
    expect(message("slope", { dates: DATES.map(() => [45000]) })).toBe(
      "All values are of one date: they have no slope.",
    );
    expect(message("slope", { dates: [[2019], [2020], [2021], [2022], [2023]] })).toMatch(
      /^dates: 2019 .* look like years/,
    );
    expect(message("slope", { dates: DATES.slice(1) })).toBe(
      "dates has 4 cells, values 5: give a value for each date.",
    );
    expect(message("slope", { values: [[12], ["abc"], [14], [15], [16]] })).toMatch(
      /^values: "abc" .* cell 2 of values\.$/,
    );
    expect(message("slope", { values: [[12], [">150"], [14], [15], [16]] })).toMatch(/A bound is not a reading/);
    for (const what of ["slope", "verdict", "crossing"]) {
      expect(code(what, three)).toBe("#N/A");
      expect(code(what, { dates: DATES.slice(1) })).toBe("#VALUE!");
    }
  });

  it("a crossing needs its limit, the rest does not", () => {
    for (const what of ["crossing", "crossing_low", "crossing_high"]) {
      expect(message(what, { limit: null })).toMatch(/^limit is not given\./);
    }
    expect(show("slope", { limit: null })).toBe(show("slope"));
  });

  it("open ends of a crossing are said in words", () => {
    const given = { values: SCATTERED };
    // A slope of 0 to 1.3 K a year: the line itself would be on 20 in a distant year, which is no date to plan by.
    expect(message("crossing", given)).toMatch(
      /^No date: the slope of 0\.\d+ a year is no change beyond its uncertainty of 2\.\d+\./,
    );
    expect(code("crossing", given)).toBe("#N/A");
    expect(show("crossing_low", given)).toBeGreaterThan(45730);
    expect(message("crossing_high", given)).toMatch(/^No latest date: within its uncertainty the slope may be 0/);
    expect(message("crossing", { limit: 10 })).toMatch(
      /^The limit of 10 has been passed already, or is moved away from: the line starts at 12\.0\d+ and rises\.$/,
    );
    expect(message("crossing", { values: DATES.map(() => [12]) })).toBe(
      "The line is level: it never reaches the limit.",
    );
    expect(message("crossing", { limit: 1e6 })).toMatch(/^The limit is reached later than the year 9999/);
    for (const what of ["crossing", "crossing_low", "crossing_high"]) expect(code(what, { limit: 10 })).toBe("#N/A");
  });

  it("on an exact line the date is certain", () => {
    const exact = { values: DATES.map(([date = 0]) => [12 + (date - 45000) / 100]) };
    expect(show("uncertainty", exact)).toBe(0);
    for (const what of ["crossing", "crossing_low", "crossing_high"]) expect(show(what, exact)).toBeCloseTo(45800, 6);
  });
});
