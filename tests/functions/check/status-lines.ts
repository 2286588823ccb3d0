/** Rows called no exception and how phases lie to each other, as in lines.ts. */
import { point } from "./line.js";
import type { Check } from "./line.js";

/** Nothing to correct, so that rises are differences of what is typed. */
const clear = { emissivity: 1, air_transmission: 1 };
const sound = { ...clear, status: "no exception" };

/** Grades by NETA MTS 2023, Table 100.18: similar from 4 K grade 2, above 15 K 4; air from 11 K grade 2, above 40 K 4. */
export const STATUS_LINES: readonly Check[] = [
  {
    // 90 − (44.2 + 46.8)/2.
    line: "no exception with a gross rise",
    finding: "implausible status",
    what: /^status no exception, rise 44\.5 K over similar = grade 4 by NETA-100\.18$/,
    off: { ...sound, left: 44.2, middle: 90, right: 46.8, surrounding_air: 29 },
    inside: { ...sound, left: 44.2, middle: 46, right: 46.8, surrounding_air: 29 },
  },
  {
    // Nothing to correct it with: no emissivity.
    line: "the same, as read",
    finding: "implausible status",
    what: /^status no exception, rise 44\.5 K as read over similar = grade 4/,
    off: { ...sound, emissivity: null, left: 44.2, middle: 90, right: 46.8, surrounding_air: 29 },
    inside: { ...sound, emissivity: null, left: 44.2, middle: 46, right: 46.8, surrounding_air: 29 },
  },
  {
    // Grade 2 begins at 4 K, and ours of the rise is 0.96 K.
    line: "no exception, over similar in grade 2 beyond the uncertainty",
    finding: "implausible status",
    what: /over similar = grade 2 by/,
    off: { ...sound, left: 38, middle: 42.97, right: 38 },
    inside: { ...sound, left: 38, middle: 42.95, right: 38 },
  },
  {
    line: "no exception by the job's own criteria",
    finding: "implausible status",
    what: /over similar = grade 2 by house$/,
    off: { ...sound, left: 38, middle: 44, right: 38 },
    inside: { ...sound, left: 38, middle: 43.95, right: 38 },
    job: { criteria: "house" },
  },
  {
    // 26.5 + 11 + 2.8 K.
    line: "no exception, with nothing but the air to compare with",
    finding: "implausible status",
    what: /over air = grade 2 by/,
    off: { ...sound, ...point, reading: 40.31, reference: null },
    inside: { ...sound, ...point, reading: 40.29, reference: null },
  },
  {
    // 26.5 + 40 + 2.8 K: what warms all three alike is load, short of the worst grade.
    line: "no exception, all three far above the air",
    finding: "implausible status",
    what: /over air = grade 4 by/,
    off: { ...sound, left: 69.31, middle: 69.31, right: 69.31 },
    inside: { ...sound, left: 69.29, middle: 69.29, right: 69.29 },
  },
  {
    line: "no exception, two phases hot",
    finding: "implausible status",
    what: /rise 16 K over the lowest = grade 4 by/,
    off: { ...sound, left: 44, middle: 60, right: 60, surrounding_air: 29 },
    inside: { ...sound, left: 44, middle: 46, right: 46, surrounding_air: 29 },
  },
  {
    // (111 − 32)/1.8 = 43.9, (116 − 32)/1.8 = 46.7; of 132 it would be 55.6.
    line: "no exception, readings that may be in °F",
    finding: "implausible status",
    what: /; or typed in °F: 44 °C to 47 °C\?$/,
    off: { ...sound, left: 111, middle: 113, right: 116, surrounding_air: 29 },
    inside: { ...sound, left: 130, middle: 131, right: 132, surrounding_air: 29 },
  },
  {
    line: "a machine is not judged over the air",
    finding: "implausible status",
    what: /over air/,
    off: { ...sound, ...point, reading: 80, reference: null },
    inside: { ...sound, ...point, reading: 80, reference: null, load: null, reference_load: null, process_load: 80 },
  },
  {
    line: "two phases hot",
    finding: "caution middle",
    what: /^two phases hot: no similar reference; 16 K over the lowest would be grade 4$/,
    off: { ...clear, left: 44, middle: 60, right: 60, surrounding_air: 29 },
    inside: { ...clear, left: 44, middle: 45, right: 60, surrounding_air: 29 },
  },
  {
    // The mean of the others is 52 °C both times: 15 K, an edge, but a mean of a hot phase and a cool one is none of both.
    line: "an edge within U, never over the mean of a hot phase and a cool one",
    finding: "caution right",
    what: /^rise 15 K over similar ± 0\.96 K: edge 15 K within$/,
    off: { ...clear, left: 52, middle: 52, right: 67 },
    inside: { ...clear, left: 44, middle: 60, right: 67 },
  },
];
