import { auditReport } from "../../src/functions/audit-report.js";
import { auditLines } from "../../src/functions/audit-shown.js";
import type { Cell } from "../../src/functions/contract.js";
import { measure } from "mitata";

/** A long report of invented readings; half of its temperatures are right, so that slips are looked for in the other half. */
const ROWS = 2000;
/**
 * A row's verdicts come to some 1,500 corrections: every slip, each with its own settings and bands, for the row and again for
 * the whole report. The floor is one Math.exp and one Math.log for each of as many values.
 */
const FLOOR = ROWS * 1500;
const MOST = 16;

const headers = [
  "item image stated_temp stated_reference_temp stated_rise reference stated_rise_at_load stated_grade apparent",
  "reference_apparent emissivity reflected surrounding_air load reference_load distance humidity material",
].flatMap((line) => line.split(" "));

const rows = Array.from({ length: ROWS }, (_, i): Cell[] => {
  const [hot, cool] = [50 + (i % 37) / 2, 38 + (i % 23) / 3];
  const emissivity = 0.6 + (i % 36) / 100;
  const right = (reading: number): number => 23 + (reading - 23) / emissivity;
  const stated = i % 2 === 0 ? right(hot) : hot;
  const states = [stated, right(cool), stated - right(cool)].map((one) => one.toFixed(1));
  const given = [hot.toFixed(1), cool.toFixed(1), emissivity, 23, 23.4, 40 + (i % 50), 100, 1, 45];
  return [`Q${i}`, `IR-${i}`, ...states, "similar", "", 2, ...given, "paint"];
});

/** Best of a few runs [ns]: one takes a second, and warms itself up. */
async function best(run: () => unknown): Promise<number> {
  run();
  const { min } = await measure(run, { min_samples: 5, min_cpu_time: 1, batch_unroll: 1 });
  return min;
}

const numbers = Float64Array.from({ length: FLOOR }, (_, i) => 1 + i / FLOOR);
let sum = 0;
const floor = await best(() => {
  for (const number of numbers) sum += Math.log(Math.exp(number));
});
// The function AUDIT remembers its last reports: what it does the first time is measured.
const time = await best(() => auditLines(auditReport(headers, rows, [], "C")));
const ratio = time / floor;
const verdict = ratio <= MOST && sum > 0 ? "" : "  TOO SLOW";
console.log(
  `AUDIT of ${ROWS} rows: ${(time / 1e6).toFixed(0)} ms, ${ratio.toFixed(2)} of the floor  (limit ${MOST})${verdict}`,
);
if (verdict) process.exitCode = 1;
