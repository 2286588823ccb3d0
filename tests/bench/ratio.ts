import { measure } from "mitata";
import { column, ROWS } from "./columns.js";

const x = column(1, 2);
const t = column(300, 600);
const y = new Float64Array(ROWS);

/** One exponential and one logarithm a row: what any machine is measured against. */
function floor(): void {
  for (let i = 0; i < ROWS; i++) y[i] = Math.exp(x[i]!) * Math.log(t[i]!);
}

/** Best of at least 40 runs after warm-up [ns]. */
export async function best(run: () => unknown): Promise<number> {
  for (let i = 0; i < 10; i++) run();
  const { min } = await measure(run, { min_samples: 40, min_cpu_time: 1, batch_unroll: 1 });
  return min;
}

export interface Case {
  readonly name: string;
  readonly most: number;
  readonly run: () => unknown;
}

/** Prints each case as a multiple of the floor measured beside it, and fails the run where one is above its limit. */
export async function compare(title: string, cases: readonly Case[]): Promise<void> {
  console.log(`${title}: ${ROWS} rows, multiples of exp + log a row`);
  for (const { name, most, run } of cases) {
    // The floor is taken anew beside each case: what else the machine does changes by the second.
    const before = await best(floor);
    const time = await best(run);
    const unit = Math.min(before, await best(floor));
    const ratio = time / unit;
    const verdict = ratio <= most ? "" : "  TOO SLOW";
    console.log(
      `  ${name.padEnd(48)} ${ratio.toFixed(2).padStart(7)}  (limit ${most}; ${(time / ROWS).toFixed(1)} ns a row, floor ${(unit / ROWS).toFixed(1)})${verdict}`,
    );
    if (verdict) process.exitCode = 1;
  }
}
