import { CHECK } from "../../src/functions/check.js";
import type { Cell } from "../../src/functions/contract.js";
import { best } from "./ratio.js";

/** A long route of invented readings, every row with its settings; the first call of a session included in the warm-up. */
const ROUTE_ROWS = 2000;
const MOST_MS = 1000;

const headers = [
  "asset_id status thermal_image time left middle right amps_left amps_middle amps_right surrounding_air",
  "emissivity reflected distance humidity expected_max_A target_size ifov wind surface known_from",
].flatMap((line) => line.split(" "));

const rows = Array.from({ length: ROUTE_ROWS }, (_, i): Cell[] => {
  const readings = [38 + (i % 7), 39 + (i % 5), 55 + (i % 11)];
  const settings = [20 + (i % 40) / 4, 0.9 + (i % 6) / 100, 22, 1, 45, 290, 20, 1.36, i % 9, "paint", "measured"];
  return [`Q${i}`, "exception", `IR-${i}`, 0.3 + i / 10_000, ...readings, 231, 226, 229, ...settings];
});

const time = (await best(() => CHECK.evaluate([[headers], rows]))) / 1e6;
const verdict = time <= MOST_MS ? "" : "  TOO SLOW";
console.log(`CHECK of ${ROUTE_ROWS} rows: ${time.toFixed(0)} ms  (limit ${MOST_MS} ms)${verdict}`);
if (verdict) process.exitCode = 1;
