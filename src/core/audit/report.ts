import { AS_STATED, TEMPERATURE_SLIPS } from "./explain.js";
import type { TemperatureSlipKey } from "./explain.js";
import { CHANCE_SPAN, SLACK } from "./judge.js";
import type { Explanation, Judged } from "./judge.js";

/** The inputs as stated, with the digits cut off and not rounded. */
export const CUT_OFF = "cut-off";

/** How much of a report one slip would explain. */
export interface ReportLine<Key extends string = string> {
  readonly key: Key;
  /** Rows that the slip explains and the inputs as stated do not; of the inputs as stated, rounded or cut off, all of them. */
  readonly explained: number;
  /** Rows in which the slip would show; of the inputs as stated, all rows. */
  readonly rows: number;
  /** Median of stated less given over `rows` [K]; undefined where there is none. */
  readonly median: number | undefined;
  /**
   * Rows that would be explained by chance, were the numbers drawn evenly within ±`CHANCE_SPAN` of the right ones: of the
   * inputs as stated by these alone; of a slip by any of the slips, in the rows that it had left to explain.
   */
  readonly byChance: number;
  /** More rows than chance explains. */
  readonly sure: boolean;
}

type Key = TemperatureSlipKey | typeof AS_STATED | typeof CUT_OFF;
type RowKey = TemperatureSlipKey | typeof AS_STATED;

/** With its lines by their keys. */
interface FoundRow extends Explanation<RowKey> {
  readonly byKey: ReadonlyMap<RowKey, Judged<RowKey>>;
}

interface Tally extends ReportLine<Key> {
  /** Rows that the inputs as stated reproduce although the slip would show. */
  readonly against: number;
  /** Rows that neither the slip nor the inputs as stated explain. */
  readonly neither: number;
  /** Rows explained that nothing else would explain: not those that are open. */
  readonly firm: number;
  /** Of digits cut off: all rows that they fit, those included that rounding fits too. */
  readonly fits?: number;
}

/**
 * Whether a slip explains more rows than chance: the best of so many slips, in the rows that were left to explain.
 * @param chance of one row to be explained by one slip
 */
export function isBeyondChance(explained: number, left: number, slips: number, chance: number): boolean {
  return slips * atLeast(explained, left, chance) < SIGNIFICANCE;
}

/** Above this, rows explained by chance alone are no wonder. */
const SIGNIFICANCE = 0.05;

/**
 * Which slip would explain a whole report: the inputs as stated, and every slip that explains a row which they do not.
 * A slip stands before the inputs as stated where it explains more of the rows that tell the two apart, and more than
 * chance does. Digits that were cut off come before any slip that explains no more than they do.
 * @param rows what `explain` says of each row
 * @param open rows that the inputs as stated would explain if their readings were rounded: they put no slip before them
 * @param step the last digit of the stated numbers [K], where it is known: without it digits cut off are not looked for
 */
export function explainReport(
  rows: readonly Explanation<RowKey>[],
  step?: number,
  open: readonly boolean[] = [],
): readonly ReportLine<Key>[] {
  const computed = new Set(rows.flatMap(({ lines }) => lines.map(({ key }) => key)));
  const keys: readonly RowKey[] = [AS_STATED, ...TEMPERATURE_SLIPS.map(({ key }) => key)];
  const tolerances = rows.map(({ tolerance }) => tolerance);
  const chance = Math.min(1, tolerances.reduce((sum, one) => sum + one, 0) / rows.length / CHANCE_SPAN);
  const found = rows.map((row) => ({ ...row, byKey: new Map(row.lines.map((line) => [line.key, line])) }));
  const [own, ...slips] = keys
    .filter((key) => computed.has(key))
    .map((key) => tally(key, found, open, chance, computed.size));
  if (own === undefined) return [];
  const explaining = slips.filter(({ explained }) => explained > 0);
  const before = explaining.filter((slip) => slip.sure && slip.firm > slip.against);
  const after = explaining.filter((slip) => !before.includes(slip));
  before.sort((a, b) => net(b) - net(a) || finer(a, b));
  after.sort((a, b) => b.explained - a.explained || a.against - b.against || finer(a, b));
  const cut =
    step === undefined || step / 2 > Math.min(...tolerances) + SLACK ? undefined : cutOff(rows, step, computed.size);
  const leads = cut !== undefined && (before[0] === undefined || net(cut) >= net(before[0]));
  const slipsInOrder = leads ? [cut, own, ...before, ...after] : [...before, own, ...after];
  const sorted =
    own.explained > 0 || leads || open.includes(true)
      ? slipsInOrder
      : [...slipsInOrder.filter((line) => line !== own), own];
  return sorted.map(({ key, fits, explained, rows: shown, median, byChance, sure }) => ({
    key,
    explained: fits ?? explained,
    rows: shown,
    median,
    byChance,
    sure,
  }));
}

const net = ({ firm, against }: Tally): number => firm - against;
const finer = (a: Tally, b: Tally): number =>
  a.neither - b.neither || Math.abs(a.median ?? Infinity) - Math.abs(b.median ?? Infinity);

/**
 * Digits cut off in place of rounded, where every row fits that, or more rows than speak against it and than chance does;
 * else undefined. Rows that rounding explains too say nothing.
 */
function cutOff(rows: readonly Explanation<RowKey>[], step: number, slips: number): Tally | undefined {
  const known = rows.flatMap(({ lines: [own], reproduced }) =>
    own?.difference === undefined ? [] : [{ difference: own.difference, reproduced }],
  );
  // Cut off, a number is less than it was by anything from nothing to nearly a whole step.
  const fit = ({ difference }: { difference: number }): boolean => difference <= SLACK && difference > -step - SLACK;
  const count = (those: (row: (typeof known)[number]) => boolean): number => known.filter(those).length;
  const explained = count((row) => !row.reproduced && fit(row));
  const neither = count((row) => !row.reproduced && !fit(row)) + rows.length - known.length;
  const against = count((row) => row.reproduced && !fit(row));
  const sure = slips * atLeast(explained, explained + neither, step / 2 / (2 * CHANCE_SPAN)) < SIGNIFICANCE;
  if (explained === 0 || !(against + neither === 0 || (sure && explained > against))) return undefined;
  const differences = known.map(({ difference }) => difference);
  return {
    key: CUT_OFF,
    explained,
    fits: count(fit),
    rows: rows.length,
    median: median(differences),
    byChance: (rows.length * step) / (2 * CHANCE_SPAN),
    against,
    neither,
    firm: explained,
    sure,
  };
}

function tally(key: RowKey, rows: readonly FoundRow[], open: readonly boolean[], chance: number, slips: number): Tally {
  const differences: number[] = [];
  let explained = 0;
  let against = 0;
  let neither = 0;
  let firm = 0;
  let byChance = 0;
  for (const [at, { lines, byKey, reproduced }] of rows.entries()) {
    const line = byKey.get(key);
    if (line === undefined) continue;
    if (key === AS_STATED) {
      differences.push(line.difference ?? NaN);
      explained += reproduced ? 1 : 0;
      byChance += line.chance ?? 0;
      continue;
    }
    if (line.verdict === "hidden") continue;
    differences.push(line.difference ?? NaN);
    const isFirm = !reproduced && open[at] !== true;
    if (line.verdict === "matches") {
      explained += reproduced ? 0 : 1;
      firm += isFirm ? 1 : 0;
    } else if (reproduced) against++;
    else if (isFirm) neither++;
    if (!reproduced) byChance += chanceOfAny(lines, chance);
  }
  return {
    key,
    explained,
    rows: differences.length,
    median: median(differences.filter((difference) => !Number.isNaN(difference))),
    byChance,
    against,
    neither,
    firm,
    sure: isBeyondChance(firm, firm + neither, slips, chance),
  };
}

/** Of a row to be explained by some slip and not by the inputs as stated; at most, where they have no answer. */
function chanceOfAny(lines: Explanation<RowKey>["lines"], chance: number): number {
  const all = lines.at(-1)?.chance;
  const own = lines[0]?.chance;
  return all === undefined || own === undefined ? Math.min(1, (lines.length - 1) * chance) : all - own;
}

/** Probability that of n rows at least k are explained where each is by chance p. */
function atLeast(k: number, n: number, p: number): number {
  let sum = 0;
  // Terms C(n, i)·pⁱ·(1 − p)ⁿ⁻ⁱ from i = 0 on, each from the one before.
  let term = (1 - p) ** n;
  for (let i = 0; i <= n; i++) {
    if (i >= k) sum += term;
    term *= ((n - i) / (i + 1)) * (p / (1 - p));
  }
  return k === 0 || p >= 1 ? 1 : sum;
}

function median(values: readonly number[]): number | undefined {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  const upper = sorted[Math.floor(middle)];
  const lower = sorted[Math.ceil(middle) - 1];
  return upper === undefined || lower === undefined ? undefined : (upper + lower) / 2;
}
