import { GreybodyError, requireInRange } from "../core/errors.js";
import { DATE } from "../core/plan/calendar.js";
import { crossing, crossingEnd } from "../core/trend/crossing.js";
import { isYear, trend, TREND_VALUE } from "../core/trend/trend.js";
import type { Trend } from "../core/trend/trend.js";
import type { ArgumentSpec, CellError, FunctionSpec, Input } from "./contract.js";
import { defineCells } from "./lift.js";
import { gridOf, readNumbers } from "./read.js";
import { COVERAGE_ARGUMENT } from "./uncertainty-arguments.js";
import { unitOf } from "./units.js";

const SHOWS = ["slope", "uncertainty", "start", "crossing", "crossing_low", "crossing_high", "verdict"] as const;
const DATES_SHOWN: readonly string[] = ["crossing", "crossing_low", "crossing_high"];

/** One row or column, of which an empty cell leaves its pair out. */
function series(spec: ArgumentSpec): ArgumentSpec {
  return { ...spec, whole: true, columns: [{ ...spec, optional: true }] };
}

const DATES = series({
  name: "dates",
  quantity: "date",
  help: "dates of the values, in any order; pairs with an empty cell are left out",
  range: DATE,
  zeroIsBlank: true,
});
const VALUES = series({
  name: "values",
  quantity: "number",
  help: "a value for each date, all in one unit and brought to one load",
  range: TREND_VALUE,
});

interface Pairs {
  readonly dates: readonly number[];
  readonly values: readonly number[];
}

/** The numbers of one argument in a line, or the first fault with its place. */
function readSeries(spec: ArgumentSpec, input: Input): number[] | CellError {
  if (input === undefined || input === null || input === "") {
    return { error: "#VALUE!", message: `${spec.name} is not given. Needed: ${spec.help}.` };
  }
  const cells = gridOf(input).flat();
  const [column = spec] = spec.columns ?? [];
  const unit = unitOf(spec.quantity, "C");
  const { values, faults } = readNumbers(column, [cells], unit, unit);
  for (const [k, fault] of faults ?? []) {
    if (fault === cells[k] || cells.length === 1) return fault;
    return { error: fault.error, message: `${fault.message} It is cell ${k + 1} of ${spec.name}.` };
  }
  return [...values];
}

function readPairs(inputs: readonly Input[]): Pairs | CellError {
  const dates = readSeries(DATES, inputs[0]);
  if ("error" in dates) return dates;
  const values = readSeries(VALUES, inputs[1]);
  if ("error" in values) return values;
  if (dates.length !== values.length) {
    const message = `dates has ${dates.length} cells, values ${values.length}: give a value for each date.`;
    return { error: "#VALUE!", message };
  }
  const isPair = (k: number): boolean => !Number.isNaN(dates[k]) && !Number.isNaN(values[k]);
  const whole = dates.map((_, k) => k).filter(isPair);
  return { dates: whole.map((k) => dates[k]!), values: whole.map((k) => values[k]!) };
}

/** The verdict; with a limit also whether the line has passed it by the last date. */
function verdictOn(found: Trend, last: number, limit: number | undefined): string {
  const { verdict, line, start } = found;
  if (limit === undefined) return verdict;
  const end = line.level + line.slope * (last - line.middle);
  const isPast = verdict === "rising" ? end >= limit : verdict === "falling" && start > limit && end <= limit;
  return isPast ? `${verdict}, limit passed` : verdict;
}

export const TREND: FunctionSpec = defineCells({
  name: "TREND",
  topic: "Trend and plan",
  summary: "Straight line through dated values: slope a year with its uncertainty, and when a limit is reached.",
  returns: "what show names: per year, a value, a date, or words",
  args: [
    DATES,
    VALUES,
    {
      name: "limit",
      quantity: "number",
      help: "value whose date is wanted, in the unit of values; needed for a crossing; a verdict then tells whether it has been passed",
      optional: true,
      range: TREND_VALUE,
    },
    {
      name: "show",
      quantity: "text",
      help: "slope and its expanded uncertainty a year, value at the first date, date the limit is reached (where the slope is a change), its ends, verdict",
      optional: true,
      default: "slope",
      choices: SHOWS,
    },
    COVERAGE_ARGUMENT,
  ],
  result: (values) => (DATES_SHOWN.includes(values.text("show")) ? "date" : "number"),
  whole: readPairs,
  cell: (values, whole) => {
    const pairs = whole as Pairs;
    const show = values.text("show");
    const limit = values.optional("limit");
    if (limit !== undefined) requireInRange("limit", limit, TREND_VALUE);
    // A day of 1901 would do for the line, but no survey is of that day.
    for (const date of pairs.dates) {
      requireInRange("dates", date, DATE, { key: isYear(date) ? "trend-years" : "trend-dates" });
    }
    const found = trend(pairs.dates, pairs.values, values.number("coverage"));
    if (show === "slope" || show === "uncertainty" || show === "start") return found[show];
    if (show === "verdict") return verdictOn(found, Math.max(...pairs.dates), limit);
    if (limit === undefined) {
      throw new GreybodyError({ code: "NOT_GIVEN", argument: "limit", hint: { key: "trend-limit-needed" } });
    }
    if (show === "crossing") return crossing(found.line, limit);
    return crossingEnd(found.line, limit, show === "crossing_low" ? "low" : "high");
  },
  example: {
    formula: '=GREY.TREND({45000;45180;45365;45550;45730},{12;13.1;14.4;15.2;16.5},20,"slope")',
    shows: "2.2",
  },
  sources: ["jcgm-100-2008", "golub-1965", "fieller-1954"],
});
