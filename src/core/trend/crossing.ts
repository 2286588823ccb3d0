import { requireInRange } from "../errors.js";
import { DAY, refused, TREND_VALUE, YEAR } from "./trend.js";
import type { TrendLine } from "./trend.js";

/**
 * Date on which the line reaches a limit, at or after the first date.
 * @throws INVALID "limit"; REFUSED where the slope is no change beyond its uncertainty, so that the date hangs on scatter
 * alone; where the line is past the limit from the first date on, or moves away from it; where it reaches it only beyond
 * the last date that a sheet has
 */
export function crossing(line: TrendLine, limit: number): number {
  requireInRange("limit", limit, TREND_VALUE);
  if (line.slope === 0) throw refused("trend-level", {});
  if (Math.abs(line.slope) <= line.slopeU) {
    throw refused("trend-no-change", { slope: line.slope * YEAR, uncertainty: line.slopeU * YEAR });
  }
  return meeting(line, limit);
}

/** The date alone, whatever the slope's uncertainty. */
function meeting(line: TrendLine, limit: number): number {
  const date = line.middle + (limit - line.level) / line.slope;
  if (date < line.first - 1e-6) {
    throw refused("trend-behind", { limit, start: startOf(line), way: line.slope > 0 ? "rises" : "falls" });
  }
  return inCalendar(Math.max(date, line.first));
}

const startOf = ({ level, slope, first, middle }: TrendLine): number => level + slope * (first - middle);

function inCalendar(date: number): number {
  if (date > (DAY.max ?? Infinity)) throw refused("trend-beyond-calendar", {});
  return date;
}

/**
 * Earliest or latest date on which the limit may be reached: an end of the exact interval for the date at which the true
 * line, not one more reading, has the value of the limit. All dates d from the middle belong to it with
 *   (level + slope·d − limit)² ≤ levelU² + slopeU²·d².
 * It is open where the slope does not exceed its uncertainty: then the limit may never be reached.
 * @throws as `crossing`, but for a slope that is no change: then one end may still be there; REFUSED where that end is open
 * Source: Fieller 1954 (ratio of two means), as inverse prediction from a line.
 */
export function crossingEnd(line: TrendLine, limit: number, end: "low" | "high"): number {
  requireInRange("limit", limit, TREND_VALUE);
  if (line.slope === 0) throw refused("trend-level", {});
  const date = meeting(line, limit);
  const { slope, levelU, slopeU, level, middle } = line;
  const away = limit - level;
  // (slope² − slopeU²)·d² − 2·slope·away·d + away² − levelU² = 0
  const square = (slope - slopeU) * (slope + slopeU);
  const inside = levelU * levelU * square + slopeU * slopeU * away * away;
  const open = refused(end === "low" ? "trend-open-low" : "trend-open-high", {});
  if (square === 0 || inside < 0) throw open;
  const root = Math.sqrt(inside);
  const sum = slope * away + (slope * away < 0 ? -root : root);
  const ends = [sum / square, sum === 0 ? 0 : (away * away - levelU * levelU) / sum].map((d) => middle + d);
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  // Within the uncertainty the slope may be 0: the dates are those outside the two ends, one way without an end.
  if (square < 0) {
    const reached = end === "low" && date >= high ? high : end === "high" && date <= low ? low : undefined;
    if (reached === undefined) throw open;
    return inCalendar(reached);
  }
  if (end === "high") return inCalendar(high);
  if (low <= 0) throw open;
  return low;
}
