/** An invented switchroom: emissivity is known to be somewhere between two ends, and nobody knows which. */
import type { Units } from "../../functions/units.js";
import type { BookDescription } from "../contract.js";
import { whatIfBook } from "./book.js";
import type { WhatIfRow } from "./typed.js";

const similar = { over: "similar" } as const;

const rows: readonly WhatIfRow[] = [
  { item: "Feeder 1, joint, left", apparent: 58, reference_apparent: 45, ...similar, load: 140, reference_load: 200 },
  {
    item: "Feeder 1, joint, right",
    apparent: 47.2,
    reference_apparent: 45,
    ...similar,
    load: 138,
    reference_load: 200,
  },
  {
    item: "Feeder 2, fuse, middle",
    apparent: 61.4,
    reference_apparent: 49.8,
    ...similar,
    load: 60,
    reference_load: 200,
  },
  { item: "Feeder 3, terminal", apparent: 41.5, over: "ambient", load: 90, reference_load: 160 },
  { item: "Feeder 4, link, painted", apparent: 52.3, reference_apparent: 48.1, ...similar, emissivity: 0.92 },
  {
    item: "Incomer, behind its window",
    apparent: 44.8,
    reference_apparent: 39.1,
    ...similar,
    load: 410,
    reference_load: 630,
    window_transmission: 0.62,
    window_temp: 27,
    window_reflectance: 0.04,
    outer_reflected: 23,
  },
  { item: "Feeder 5, lug by a wall", apparent: 36.8, reference_apparent: 33.9, ...similar, reflected: 34 },
  { item: "Feeder 6, spare", apparent: 22.4, over: "ambient" },
];

export function demoWhatIf(units: Units = "C"): BookDescription {
  return whatIfBook({
    title: "What if, demo",
    about: ["Demonstration: the switchroom, its readings and every setting are invented."],
    values: {
      varied: "emissivity",
      from: 0.7,
      to: 0.98,
      emissivity: 0.95,
      reflected: 22,
      surrounding_air: 24,
    },
    rows,
    units,
  });
}
