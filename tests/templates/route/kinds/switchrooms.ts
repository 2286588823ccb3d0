/** Switchrooms, server room and transformer room. */
import { fine, type Kind } from "./kind.js";

export const SWITCHROOMS: readonly Kind[] = [
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
      judged_by: "over similar (NETA-100.18)",
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
      judged_by: "over air (NETA-100.18)",
      grade_found_u: "± 2.8 K, edge 40 K inside",
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
      grade_found_u: "± 5.2 K",
      remarks: "emissivity 0.55: wide uncertainty",
    },
  ],
  [
    "two airs",
    "GEN-ATS",
    {
      judged_by: "share of limit (house-limit)",
      grade_found: "2 of 4: close to its limit",
      finding: "all three hot: overload, harmonics, ventilation or size",
      remarks: "over the enclosure's air 20.0 K: grade 2 of 4, the room's governs",
    },
  ],
  [
    "light load",
    "UPS-IN",
    {
      grade_found: "2 of 4: probable fault",
      limit_at_load: "28 % of rated load: no limit",
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
      grade_found_u: "± 5 points, edge 75 % inside",
    },
  ],
  [
    "indirect view",
    "TX1-HV",
    {
      grade_air: "indirect view: no table grade",
      grade_found: "1 of 4: warmer than similar components",
      judged_by: "over similar (house-indirect)",
      criteria_action: "investigate by another method",
      grade_full: "indirect view: not projected",
    },
  ],
  [
    "window in front",
    "MV-C1",
    {
      grade_found: "2 of 4: probable fault",
      grade_found_u: "± 1.5 K",
      limit_at_load: "5 % of rated load: no limit",
    },
  ],
];
