/**
 * An invented client's report of an invented bakery. Some of its numbers are wrong on purpose, as such numbers usually go wrong:
 * which ones stands beside the test that looks for them, tests/templates/audit-demo.test.ts, and nowhere else.
 */
import type { Cell } from "../../functions/contract.js";
import type { Units } from "../../functions/units.js";
import type { BookDescription } from "../contract.js";
import { auditBook } from "./book.js";
import type { ClaimRow } from "./typed.js";

const KEYS = [
  "item",
  "image",
  "stated_temp",
  "stated_reference_temp",
  "stated_rise",
  "reference",
  "stated_rise_at_load",
  "stated_grade",
  "apparent",
  "reference_apparent",
  "emissivity",
  "reflected",
  "surrounding_air",
  "load",
  "reference_load",
  "material",
] as const satisfies readonly (keyof ClaimRow)[];

// prettier-ignore
const ROWS: readonly (readonly Cell[])[] = [
  ["Mixer 1, feeder, left", "D-0201", 42.2, 36.9, 5.3, "similar", 9.2, "2 of 4", 41.3, 36.2, 0.95, 23, 24.1, 118, 160, "insulation, PVC"],
  ["Mixer 1, contactor, right", "D-0202", 49.0, 40.8, 8.3, "similar", null, "2 of 4", 47.8, 39.9, 0.95, 23, 24.1, 64, 95, "painted steel"],
  ["Mixer 2, feeder, middle", "D-0203", 52.6, 39.2, 14.8, "similar", null, "2 of 4", 52.6, 38.4, 0.95, 23, 24.3, 121, 160, "insulation, PVC"],
  ["Oven 1, terminal strip", "D-0204", 74.7, 57.4, 17.3, "similar", 33.2, "4 of 4", 71.2, 55, 0.92, 24, 25.6, 87, 125, "porcelain, glazed"],
  ["Oven 1, fuse, middle", "D-0205", "70", 60.7, 8.9, "similar", null, "2 of 4", 66.4, 58.1, 0.92, 24, 25.6, 92, 125, "porcelain, glazed"],
  ["Oven 2, fuse, left", "D-0206", 88.0, 64.4, 23.6, "similar", null, "4 of 4", 83.7, 61.5, 0.92, 24, 26.2, 97, 125, "porcelain, glazed"],
  ["Oven 2, contactor", "D-0207", 60.6, 50.6, 10.0, "similar", null, "2 of 4", 58.9, 49.3, 0.95, 24, 26.2, 71, 95, "painted steel"],
  ["Prover, heater terminal", "D-0208", 81.7, 59.5, 17.6, "similar", null, "4 of 4", 63.2, 50.8, 0.65, 33, 30.4, 44, 63, "copper, oxidised"],
  ["Prover, fan starter", "D-0209", 50.5, 47.4, 3.0, "similar", 8.6, "2 of 4", 49.5, 46.6, 0.95, 31, 30.4, 18, 32, "insulation, rubber"],
  ["Main board, incomer, left", "D-0210", "46", "40", 6.2, "similar", null, "2 of 4", 44.7, 38.8, 0.95, null, 23.8, 412, 630, "tape"],
  ["Main board, incomer, right", "D-0211", 47.2, 39.6, 7.6, "similar", null, "2 of 4", 46.1, 38.8, 0.95, 23, 23.8, 418, 630, "tape"],
  ["Main board, coupler", "D-0212", 76.9, 47.0, 15.5, "similar", null, "4 of 4", 52.3, 41.6, 0.65, 31, 23.8, 275, 630, "copper, oxidised"],
  ["Cooling, compressor 1", "D-0213", 39.8, null, 17.2, "ambient", null, "2 of 4", 38.9, null, 0.95, 22, 22.6, 151, 200, "painted steel"],
  ["Cooling, compressor 2", "D-0214", 51.0, null, 28.4, "ambient", null, "3 of 4", 49.7, null, 0.95, 22, 22.6, 163, 200, "painted steel"],
  ["Cooling, pump", "D-0215", 37.1, null, 14.5, "ambient", null, "2 of 4", 36.4, null, 0.95, 22, 22.6, 23, 32, "painted steel"],
  ["Packing 1, drive", "D-0216", 56.9, 45.2, 11.7, "similar", 68.4, "2 of 4", 55.3, 44.1, 0.95, 23, 24.7, 15, 40, "painted steel"],
  ["Packing 1, isolator", "D-0217", 49.7, 41.1, 8.6, "similar", null, "2 of 4", 48.4, 40.2, 0.95, 23, 24.7, 83, 125, "insulation, PVC"],
  ["Packing 2, isolator", "D-0218", 74.7, 56.4, 13.1, "similar", null, "2 of 4", 58.8, 45.7, 0.65, 23, 24.7, 79, 125, "copper, oxidised"],
  ["Packing 2, drive", "D-0219", 53.3, 44.2, 9.1, "similar", null, "2 of 4", 51.9, 43.2, 0.95, 23, 24.7, 27, 40, "painted steel"],
  ["Silo, blower starter", "D-0220", 60.4, 50.0, 13.1, "similar", null, "2 of 4", 61.4, 48.9, 0.95, 27, 27.3, 57, 80, "insulation, rubber"],
  ["Silo, blower feeder", "D-0221", 59.0, 48.9, 10.1, "similar", 18.7, "2 of 4", 57.5, 47.8, 0.95, 27, 27.3, 114, 160, "insulation, PVC"],
  ["Silo, screw feeder", "D-0222", 47.6, 44.1, 3.5, "similar", null, "1 of 4", 46.6, 43.3, 0.95, 27, 27.3, 33, 63, "insulation, PVC"],
  ["Mill, feeder, left", "D-0223", 71.3, 53.7, 31.7, "similar", null, "4 of 4", 69.3, 52.4, 0.95, 26, 26.9, 188, 250, "insulation, PVC"],
  ["Mill, feeder, middle", "D-0224", 65.6, 53.7, 38.7, "similar", null, "4 of 4", 63.8, 52.4, 0.95, 26, 26.9, 167, 250, "insulation, PVC"],
  ["Mill, contactor", "D-0225", 59.8, 51.9, 7.8, "similar", null, "2 of 4", 58.2, 50.7, 0.95, 26, 26.9, 93, 125, "painted steel"],
  ["Mill, soft starter", "D-0226", 63.4, null, 36.5, "ambient", null, "4 of 4", 61.7, null, 0.95, 26, 26.9, 109, 160, "painted steel"],
  ["Lift, brake resistor", "D-0227", 75.0, null, 50.8, "ambient", null, "4 of 4", 72.8, null, 0.95, 24, 24.2, 14, 20, "painted steel"],
  ["Lift, main switch", "D-0228", 40.6, 37.2, 3.5, "similar", null, "2 of 4", 39.8, 36.5, 0.95, 24, 24.2, 38, 63, "insulation, rubber"],
  ["Lighting board, left", "D-0229", 43.5, 39.5, 4.0, "similar", null, "2 of 4", 42.5, 38.7, 0.95, 22, 23.1, 46, 63, "insulation, PVC"],
  ["Lighting board, right", "D-0230", 46.2, 39.5, 6.7, "similar", 4.6, "2 of 4", 45.1, 38.7, 0.95, 22, 23.1, 51, 63, "insulation, PVC"],
  ["Lighting board, neutral", "D-0231", 42.9, 39.5, 3.3, "similar", null, "3 of 4", 41.9, 38.7, 0.95, 22, 23.1, 41, 63, "insulation, PVC"],
  ["Workshop, welder", "D-0232", 62.5, 46.1, 16.4, "similar", null, "4 of 4", 59.6, 44.3, 0.92, 22, 22.9, 61, 100, "porcelain, glazed"],
  ["Workshop, saw", "D-0233", 44.4, 38.9, 5.4, "similar", 57.3, "2 of 4", 43.3, 38.1, 0.95, 22, 22.9, 13, 25, "painted steel"],
  ["Boiler, burner control", "D-0234", 59.7, 53.2, 6.5, "similar", null, "2 of 4", 58.4, 52.2, 0.95, 32, 33.5, 9, 16, "insulation, rubber"],
  ["Boiler, feed pump", "D-0234", 58.9, null, 25.4, "ambient", null, "3 of 4", 57.6, null, 0.95, 32, 33.5, 21, 32, "painted steel"],
  ["Boiler, circulation", "D-0236", 62.3, 58.5, 12.3, "similar", null, "2 of 4", 61.3, 52.9, 0.65, 42, 33.5, 17, 25, "copper, oxidised"],
  ["Transformer, low side", "D-0237", 66.8, null, 40.4, "ambient", null, "4 of 4", 64.9, null, 0.95, 25, 26.4, 804, 1250, "tape"],
  ["Transformer, panel window", "D-0238", 59.0, 60.7, 14.0, "similar", null, "2 of 4", 57.4, 48.2, 0.95, 25, 26.4, 811, 1250, "tape"],
  ["Charger room, rectifier", "D-0239", 52.6, null, 29.2, "ambient", null, "3 of 4", 51.2, null, 0.95, 23, 23.4, 66, 100, "painted steel"],
  ["Charger room, battery link", "D-0240", 48.5, 40.2, 8.3, "similar", null, "2 of 4", 47.3, 39.4, 0.95, 23, 23.4, 63, 100, "insulation, rubber"],
];

/** What single rows have besides, by their number. */
const BESIDES: Readonly<Record<number, ClaimRow>> = {
  27: { reading_is: "at least" },
  38: { access: "window", window_transmission: 0.62, window_temp: 28 },
};

export const claims: readonly ClaimRow[] = ROWS.map((cells, at) => ({
  ...Object.fromEntries(KEYS.map((key, i) => [key, cells[i] ?? null])),
  ...BESIDES[at + 1],
}));

export function demoAudit(units: Units = "C"): BookDescription {
  return auditBook({
    title: "Audit, demo",
    about: ["Demonstration: the client, the bakery, the report and every number in it are invented."],
    report: {
      number: "R-17",
      client: "Halden Mills",
      site: "Bakery, hall 2",
      author: "Survey of the client's own",
      date: 46084,
      auditor: "M. Tarn",
      criteria_edition: "as cited, 2003",
      exponent: 1.8,
      grades_count: "4 = worst",
      calibrated: 45901,
      distance: 1,
      humidity: 45,
    },
    rows: claims,
    units,
  });
}
