import type { Hints } from "./words.js";

/** Of the line through dated values. */
export const TREND_HINTS: Hints = {
  "trend-too-few": (w) =>
    `${w.number("count")} dated values: a slope with its uncertainty takes at least ${w.number("fewest")}.`,
  "trend-one-date": () => "All values are of one date: they have no slope.",
  "trend-years": () => "These look like years: dates are wanted, as Excel counts days (2026-03-01 is 46082).",
  "trend-limit-needed": () => "When a limit is reached cannot be told without it.",
  "trend-level": () => "The line is level: it never reaches the limit.",
  "trend-dates": () =>
    "Dates are days from 1980-01-01 (29221) to 2199-12-31 (109574), as Excel counts them. Are dates and values exchanged?",
  "trend-no-change": (w) =>
    `No date: the slope of ${w.number("slope")} a year is no change beyond its uncertainty of ${w.number("uncertainty")}. The earliest date (crossing_low) may be there all the same.`,
  "trend-behind": (w) =>
    `The limit of ${w.number("limit")} has been passed already, or is moved away from: the line starts at ${w.number("start")} and ${w.number("way")}.`,
  "trend-beyond-calendar": () => "The limit is reached later than the year 9999, with which Excel's dates end.",
  "trend-open-low": () =>
    "No earliest date: within its uncertainty the slope may be 0, and the line on the limit at any time.",
  "trend-open-high": () =>
    "No latest date: within its uncertainty the slope may be 0, and the limit is then never reached.",
};
