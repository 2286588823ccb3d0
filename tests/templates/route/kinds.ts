/** What the rows of the demo have to say, one of every kind: written by the rules of the trade, not copied from the sheet. */
import type { Value } from "../../support/book/worked.js";

/** What stands in a row, column by column. */
type Expected = Readonly<Record<string, Value>>;

const fine = {
  pattern: "balanced",
  grade_found: "0 of 4: well within its limit",
  judged_by: "share of limit",
  finding: "load heating, no joint finding",
  grade_full: "by its limit: not projected",
};

export const KINDS: readonly [kind: string, asset: string, expected: Expected][] = [
  ["fine", "MSB-INC", { ...fine, remarks: "", criteria_action: "none by these criteria", currents: "alike" }],
  [
    "no exception, nothing read",
    "MSB-Q2",
    { corrected_left: "", rise_similar: "", grade_found: "", judged_by: "", grade_full: "", remarks: "" },
  ],
  [
    "one hot phase",
    "MSB-Q3",
    {
      pattern: "one hot",
      grade_found: "4 of 4: serious fault",
      grade_found_u: "± 1.4 K",
      judged_by: "over similar",
      grade_full: "4 of 4 throughout, over similar",
      remarks: "",
    },
  ],
  [
    "a grade that depends on the exponent",
    "MSB-Q5",
    { grade_found: "2 of 4: probable fault", grade_full: "2 to 4 of 4: depends, over similar" },
  ],
  [
    "two phases hot",
    "MSB-Q8",
    {
      pattern: "two hot",
      grade_similar: "two hot",
      grade_found: "3 of 4: fault to keep under watch",
      judged_by: "over air",
      grade_found_u: "± 3.9 K, edge 40 K within",
      remarks: "two phases hot: 23.4 K over the third, not graded",
    },
  ],
  [
    "very low emissivity",
    "BUS-LK",
    {
      corrected_left: "qualitative",
      rise_left: "",
      grade_found: "no grade",
      remarks: "qualitative only: emissivity 0.15",
    },
  ],
  [
    "low emissivity",
    "CAP-1",
    {
      grade_found: "3 of 4: fault to keep under watch",
      grade_found_u: "more than ± 3.9 K",
      remarks: "emissivity 0.55: wide uncertainty",
    },
  ],
  [
    "two airs",
    "GEN-ATS",
    {
      judged_by: "share of limit",
      grade_found: "2 of 4: close to its limit",
      finding: "overload, harmonics, ventilation or size: all three",
      remarks: "over the enclosure's air 20.0 K: grade 2 of 4, the room's governs",
    },
  ],
  [
    "light load",
    "UPS-IN",
    {
      grade_found: "2 of 4: probable fault",
      limit_at_load: "28 % of rated: none",
      full_low: "",
      grade_full: "35 % load: not projected",
      remarks: "35 % load: a small rise proves nothing",
    },
  ],
  [
    "all hot, by load",
    "TX1-LV",
    {
      ...fine,
      grade_similar: "balanced",
      grade_air: "balanced: by its limit",
      grade_found_u: "± 5 %, edge 75 % within",
    },
  ],
  [
    "indirect view",
    "TX1-HV",
    {
      grade_air: "indirect view: no table grade",
      grade_found: "1 of 4: warmer than its sisters",
      criteria_action: "investigate by another method",
      grade_full: "indirect view: not projected",
    },
  ],
  [
    "window in front",
    "MV-C1",
    { grade_found: "2 of 4: probable fault", grade_found_u: "more than ± 1.4 K", limit_at_load: "5 % of rated: none" },
  ],
  [
    "window without its temperature",
    "MV-C2",
    {
      corrected_middle: "",
      rise_similar: "",
      grade_found: "no grade: needs window temperature",
      remarks: "needs: window temperature",
    },
  ],
  [
    "enclosed",
    "RMU-1",
    {
      pattern: "",
      grade_air: "enclosed view: no table grade",
      grade_found: "no grade",
      remarks: "enclosed: what is seen has no grade",
    },
  ],
  ["45 % load", "BLR-FD", { grade_full: "4 of 4 throughout, over similar", remarks: "45 % load: light" }],
  [
    "at least",
    "BLR-CB1",
    {
      grade_found: "4 of 4 at least: serious fault",
      full_high: "",
      grade_full: "4 of 4 at least, over similar",
      remarks: "reading at the camera's limit: take it again in the next range",
    },
  ],
  [
    "an edge close by",
    "MCC1-P1",
    {
      grade_found: "1 of 4: possible fault",
      grade_found_u: "± 1.4 K, edge 4 K within",
      relative_rise: "below 10 K",
      grade_full: "1 to 2 of 4: depends, over similar",
    },
  ],
  [
    "an edge within U",
    "MCC1-P4",
    { grade_found: "2 of 4: probable fault", grade_found_u: "± 1.0 K, edge 15 K within", limit_at_load: "" },
  ],
  [
    "missing current",
    "MCC2-M4",
    {
      pattern: "",
      rise_similar: "",
      grade_found: "no grade: needs current middle",
      grade_similar: "no grade",
      grade_air: "no grade",
      grade_full: "not projected",
      remarks: "needs: current middle",
    },
  ],
  [
    "missing air",
    "MCC2-M7",
    {
      rise_left: "",
      grade_air: "",
      grade_found: "2 of 4: probable fault",
      judged_by: "over similar",
      remarks: "needs: surrounding air",
    },
  ],
  [
    "colder than its reference",
    "MCC2-M9",
    {
      grade_air: "colder than its reference",
      grade_found: "no grade: colder than its reference",
      remarks: "colder than its reference: air taken elsewhere, open or unloaded phase, wet or sky-cooled",
    },
  ],
  ["not settled", "SD-FAN", { ...fine, remarks: "load changed 12 min before: not settled" }],
  [
    "all hot, beyond the limit",
    "DB-PACK",
    {
      pattern: "balanced",
      grade_found: "3 of 4: at or above its limit",
      finding: "overload, harmonics, ventilation or size: all three",
      remarks: "",
    },
  ],
  [
    "unequal currents",
    "DB-WKS",
    {
      currents: "differ by 51 %",
      hottest: "middle",
      relative_rise: "currents differ",
      grade_found: "4 of 4: serious fault",
      judged_by: "over similar",
      remarks: "currents differ by 51 %: compared at the largest",
    },
  ],
  ["partly seen", "DB-LAB", { ...fine, remarks: "partly seen: rear terminals behind a fixed barrier" }],
  [
    "a phase without current",
    "LC-HTR",
    {
      currents: "no current on left",
      pattern: "fewer than two sisters",
      rise_similar: "",
      grade_found: "2 of 4: probable fault",
      judged_by: "over air",
      remarks: "no current on left",
    },
  ],
  [
    "currents 5 to 10 % apart, read later",
    "EV-CHG",
    {
      currents: "differ by 8 %",
      judged_by: "over similar",
      remarks: "currents differ by 8 %; current read 25 min from the image",
    },
  ],
  [
    "not inspected",
    "CS-EV3",
    {
      corrected_left: "",
      currents: "",
      grade_found: "",
      grade_full: "",
      remarks: "not inspected: board blocked by stored pallets",
    },
  ],
  [
    "outdoors, cold sky",
    "ROOF-CH1",
    {
      grade_found: "3 of 4: fault to keep under watch",
      judged_by: "over air",
      grade_found_u: "± 3.9 K, edge 21 K within",
      remarks: "",
    },
  ],
  ["wind, small target", "ROOF-AH2", { ...fine, remarks: "target hardly larger than 3 × 3 pixels; wind 3.5 m/s" }],
];
