/** When the next survey is due: calendar months, the worst of three conditions, a workbook's own intervals. */
import { addMonths } from "../../../src/core/plan/calendar.js";
import { intervalsNamed, nextDue, ownIntervals } from "../../../src/core/plan/next-due.js";
import { refusal } from "../../support/refusal.js";

const DAY = 86_400_000;
/** A sheet's day by the platform's own calendar, which the core does without. */
const day = (iso: string): number => (Date.parse(iso) - Date.parse("1899-12-30")) / DAY;
const iso = (days: number): string => new Date(Date.parse("1899-12-30") + days * DAY).toISOString().slice(0, 10);

describe("months added on the calendar", () => {
  // The last day of a shorter month, as EDATE has it.
  it.each([
    ["2026-03-01", 12, "2027-03-01"],
    ["2026-08-31", 6, "2027-02-28"],
    ["2027-08-31", 6, "2028-02-29"],
    ["2024-02-29", 12, "2025-02-28"],
    ["2024-02-29", 48, "2028-02-29"],
    ["2026-10-31", 1, "2026-11-30"],
    ["2026-12-31", 2, "2027-02-28"],
    ["2099-12-31", 2, "2100-02-28"],
    ["1999-11-30", 3, "2000-02-29"],
  ])("%s and %d months is %s", (from, months, to) => {
    expect(iso(addMonths(day(from), months))).toBe(to);
  });

  it("every day of 1980 to 2199, by the platform's calendar", () => {
    const wrong: string[] = [];
    for (let from = day("1980-01-01"); from <= day("2199-12-31"); from++) {
      const date = new Date(Date.parse("1899-12-30") + from * DAY);
      const months = [0, 6, 12, 17][from % 4]!;
      const month = date.getUTCMonth() + months;
      const length = new Date(Date.UTC(date.getUTCFullYear(), month + 1, 0)).getUTCDate();
      const expected = Date.UTC(date.getUTCFullYear(), month, Math.min(date.getUTCDate(), length));
      if (addMonths(from, months) !== (expected - Date.parse("1899-12-30")) / DAY) wrong.push(iso(from));
    }
    expect(wrong).toEqual([]);
  });

  it("a time of day is dropped", () => {
    expect(addMonths(day("2026-03-01") + 0.75, 12)).toBe(day("2027-03-01"));
  });
});

const last = { lastDate: day("2026-03-01"), physicalCondition: 1, criticality: 1, environment: 1 };

describe("the worst governs", () => {
  const months = [24, 12, 6];
  it.each([
    [{}, "2028-03-01"],
    [{ physicalCondition: 2 }, "2027-03-01"],
    [{ criticality: 3 }, "2026-09-01"],
    [{ environment: 3, criticality: 2 }, "2026-09-01"],
  ])("%j", (worse, due) => {
    expect(iso(nextDue({ ...last, ...worse }, months))).toBe(due);
  });

  it("refuses what is no condition and no date of a survey", () => {
    expect(refusal(() => nextDue({ ...last, criticality: 2.5 }, months)).hint?.key).toBe("whole-number");
    expect(refusal(() => nextDue({ ...last, environment: 4 }, months)).argument).toBe("environment");
    expect(refusal(() => nextDue({ ...last, lastDate: 2026 }, months)).hint?.key).toBe("date-range");
  });
});

describe("intervals", () => {
  it("by name in any case; another name is refused with those there are", () => {
    expect(intervalsNamed("nfpa-70b-2023")).toHaveLength(3);
    expect(refusal(() => intervalsNamed("yearly")).allowed).toEqual(["NFPA-70B-2023"]);
  });
  it("a workbook's own are three whole numbers of months, none longer than the one before", () => {
    expect(ownIntervals([36, 12, 12])).toEqual([36, 12, 12]);
    for (const months of [
      [12, 6],
      [12, 6, 0],
      [12, 6, 1.5],
      [12, 6, NaN],
      [121, 12, 6],
      [12, 12, 6, 6],
    ]) {
      expect(refusal(() => ownIntervals(months)).hint?.key).toBe("intervals-form");
    }
    expect(refusal(() => ownIntervals([6, 12, 12])).hint?.key).toBe("intervals-order");
  });
});
