/** What is planted in the demo audit, worked out from each row's own inputs by tests/support/slips.ts over the exact radiance or by hand. */
import { airTransmission } from "../../src/core/air/transmission.js";
import { flatBand } from "../../src/core/planck/band.js";
import { claims } from "../../src/templates/audit/demo.js";
import { type AuditCase, object, SLIPS } from "./slips.js";

const BAND: AuditCase["band"] = [7.5, 14];
const planted = (row: number, key: keyof (typeof claims)[number]): number => Number(claims[row - 1]![key]);

function caseOf(row: number, apparent = planted(row, "apparent")): AuditCase {
  const air = planted(row, "surrounding_air");
  const t1 = airTransmission({ distance: 1, airTemp: air + 273.15, humidity: 0.45 }, flatBand(...BAND));
  const window =
    claims[row - 1]!.window_transmission === undefined
      ? {}
      : { tw: planted(row, "window_transmission"), win: planted(row, "window_temp") };
  return {
    a: apparent,
    e: planted(row, "emissivity"),
    r: planted(row, "reflected"),
    t1,
    ta: air,
    tw: 1,
    win: undefined,
    rho: 0,
    rc: undefined,
    t2: 1,
    band: BAND,
    units: "C",
    ...window,
  };
}
const hot = (row: number): number => object(caseOf(row));
const rise = (row: number): number => hot(row) - object(caseOf(row, planted(row, "reference_apparent")));
const ratio = (row: number): number => planted(row, "reference_load") / planted(row, "load");

/** Row, column, what it comes to, and the words that the audit must say. */
const SLIPS_PLANTED: readonly [
  row: number,
  key: "stated_temp" | "stated_rise" | "stated_rise_at_load",
  value: () => number,
  words: string,
][] = [
  [3, "stated_temp", (): number => planted(3, "apparent"), "the reading itself, not corrected"],
  [
    8,
    "stated_temp",
    (): number => SLIPS["reflected temperature 20 °C (68 °F)"]!(caseOf(8)),
    "reflected temperature 20 °C (68 °F)",
  ],
  [12, "stated_temp", (): number => SLIPS["corrected twice"]!(caseOf(12)), "corrected twice"],
  [
    18,
    "stated_rise",
    (): number => planted(18, "apparent") - planted(18, "reference_apparent"),
    "subtracted before corrected",
  ],
  [
    20,
    "stated_temp",
    (): number => SLIPS["reflected temperature × 1.8 + 32: °F taken for °C"]!(caseOf(20)),
    "reflected temperature × 1.8 + 32: °F taken for °C",
  ],
  [23, "stated_rise", (): number => rise(23) * 1.8, "× 1.8 once too often"],
  [24, "stated_rise", (): number => hot(24) - planted(24, "surrounding_air"), "over air in place of similar"],
  [30, "stated_rise_at_load", (): number => rise(30) * ratio(30) ** -1.8, "load and reference load swapped"],
  [33, "stated_rise_at_load", (): number => rise(33) * ratio(33) ** 3.6, "adjusted for load twice"],
  [
    36,
    "stated_temp",
    (): number => SLIPS["emissivity 0.95 as at start-up, all else as stated"]!(caseOf(36)),
    "emissivity 0.95 as at start-up, all else as stated",
  ],
  [38, "stated_temp", (): number => SLIPS["window left out"]!(caseOf(38)), "window left out"],
];
const GRADES_PLANTED: Readonly<Record<number, string>> = {
  9: "follows from the rise at load, not from the rise found",
  26: "other column: over similar it would follow",
  28: "follows only if rounded first, to 1 K",
  31: "does not follow",
};
/** Projected from 15 of 40 A. */
const METHODS_PLANTED: Readonly<Record<number, string>> = { 16: "projected from too little load" };

export { GRADES_PLANTED, METHODS_PLANTED, planted, SLIPS_PLANTED };
