/** From the cubicles to the roof. */
import { fine, type Kind } from "./kind.js";

export const PLANT: readonly Kind[] = [
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
      grade_found_u: "more than ± 3.4 K",
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
      grade_found_u: "± 1.0 K, edge 4 K inside",
      relative_rise: "below 10 K",
      grade_full: "1 to 2 of 4: depends, over similar",
    },
  ],
  [
    "an edge within U",
    "MCC1-P4",
    { grade_found: "2 of 4: probable fault", grade_found_u: "± 1.0 K, edge 15 K inside", limit_at_load: "" },
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
      judged_by: "over similar (NETA-100.18)",
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
      finding: "all three hot: overload, harmonics, ventilation or size",
      remarks: "",
    },
  ],
  [
    "unequal currents",
    "DB-WKS",
    {
      currents: "differ by 51 %, |I_hot/I_ref − 1| = 34 %, compared at 62 A",
      hottest: "middle",
      relative_rise: "currents differ",
      grade_found: "4 of 4: serious fault",
      judged_by: "over similar (NETA-100.18), compared at 62 A",
      remarks: "currents differ by 51 %, |I_hot/I_ref − 1| = 34 %, compared at 62 A",
    },
  ],
  ["partly seen", "DB-LAB", { ...fine, remarks: "partly seen: rear terminals behind a fixed barrier" }],
  [
    "a phase without current",
    "LC-HTR",
    {
      currents: "no current on left",
      pattern: "fewer than two similar phases",
      rise_similar: "",
      grade_found: "2 of 4: probable fault",
      judged_by: "over air (NETA-100.18)",
      remarks: "no current on left",
    },
  ],
  [
    "currents 5 to 10 % apart, read later",
    "EV-CHG",
    {
      currents: "differ by 8 %",
      judged_by: "over similar (NETA-100.18)",
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
      judged_by: "over air (NETA-100.18)",
      grade_found_u: "± 2.8 K, edge 21 K inside",
      remarks: "",
    },
  ],
  ["wind, small target", "ROOF-AH2", { ...fine, remarks: "target hardly larger than 3 × 3 pixels; wind 3.5 m/s" }],
];
