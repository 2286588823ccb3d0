import { AS_STATED, TEMPERATURE_SLIPS } from "./explain.js";
import type { TemperatureSlipKey } from "./explain.js";
import { CHANCE_SPAN, DEFAULT_TOLERANCE } from "./judge.js";
import type { Explanation } from "./judge.js";

/** How much of a report one slip would explain. */
export interface ReportLine<Key extends string = string> {
  readonly key: Key;
  /** Rows that the slip explains and the inputs as stated do not; of the inputs as stated, the rows they reproduce. */
  readonly explained: number;
  /** Rows in which the slip would show; of the inputs as stated, all rows. */
  readonly rows: number;
  /** Median of stated less given over `rows` [K]; undefined where there is none. */
  readonly median: number | undefined;
}

type Key = TemperatureSlipKey | typeof AS_STATED;

interface Tally extends ReportLine<Key> {
  /** Rows that the inputs as stated reproduce although the slip would show. */
  readonly against: number;
  /** Rows that neither the slip nor the inputs as stated explain. */
  readonly neither: number;
  /** More rows than chance explains. */
  readonly sure: boolean;
}

/** Above this, rows explained by chance alone are no wonder. */
const SIGNIFICANCE = 0.05;

/**
 * Which slip would explain a whole report: the inputs as stated, and every slip that explains a row which they do not.
 * A slip stands before the inputs as stated where it explains more of the rows that tell the two apart, and more than
 * chance does.
 * @param rows what `explain` says of each row
 * @param tolerance as `explain` was given
 */
export function explainReport(
  rows: readonly Explanation<Key>[],
  tolerance = DEFAULT_TOLERANCE,
): readonly ReportLine<Key>[] {
  const computed = new Set(rows.flatMap(({ lines }) => lines.map(({ key }) => key)));
  const keys: readonly Key[] = [AS_STATED, ...TEMPERATURE_SLIPS.map(({ key }) => key)];
  const chance = Math.min(1, tolerance / CHANCE_SPAN);
  const [own, ...slips] = keys.filter((key) => computed.has(key)).map((key) => tally(key, rows, chance, computed.size));
  if (own === undefined) return [];
  const found = slips.filter(({ explained }) => explained > 0);
  const before = found.filter((slip) => slip.sure && slip.explained > slip.against);
  const after = found.filter((slip) => !before.includes(slip));
  before.sort((a, b) => net(b) - net(a) || finer(a, b));
  after.sort((a, b) => b.explained - a.explained || a.against - b.against || finer(a, b));
  const sorted = own.explained > 0 ? [...before, own, ...after] : [...before, ...after, own];
  return sorted.map(({ key, explained, rows: shown, median }) => ({ key, explained, rows: shown, median }));
}

const net = ({ explained, against }: Tally): number => explained - against;
const finer = (a: Tally, b: Tally): number =>
  a.neither - b.neither || Math.abs(a.median ?? Infinity) - Math.abs(b.median ?? Infinity);

function tally(key: Key, rows: readonly Explanation<Key>[], chance: number, slips: number): Tally {
  const differences: number[] = [];
  let explained = 0;
  let against = 0;
  let neither = 0;
  for (const { lines, reproduced } of rows) {
    const line = lines.find((one) => one.key === key);
    if (line === undefined) continue;
    if (key === AS_STATED) {
      differences.push(line.difference ?? NaN);
      explained += reproduced ? 1 : 0;
      continue;
    }
    if (line.verdict === "hidden") continue;
    differences.push(line.difference ?? NaN);
    if (line.verdict === "matches") explained += reproduced ? 0 : 1;
    else if (reproduced) against++;
    else neither++;
  }
  return {
    key,
    explained,
    rows: differences.length,
    median: median(differences.filter((difference) => !Number.isNaN(difference))),
    against,
    neither,
    sure: slips * atLeast(explained, explained + neither, chance) < SIGNIFICANCE,
  };
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
