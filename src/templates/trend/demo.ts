/** An invented pump station: a joint that warms over eight years, with visits that a trend must leave out. */
import type { Units } from "../../functions/units.js";
import type { BookDescription } from "../contract.js";
import { day } from "../route/demo/moments.js";
import { trendBook } from "./book.js";
import type { Visit } from "./typed.js";

const old = { emissivity: 0.95, camera: "T-0412", expected_max: 250 } as const;
const later = { emissivity: 0.95, camera: "T-0977", expected_max: 250 } as const;

const visits: readonly Visit[] = [
  { date: day("2018-04-17"), hot: 33.1, reference: 29.8, surrounding_air: 21.4, current: 170, ...old },
  { date: day("2019-05-06"), hot: 37.4, reference: 32.2, surrounding_air: 24.0, current: 188, ...old },
  {
    date: day("2020-04-21"),
    hot: 27.9,
    reference: 26.3,
    surrounding_air: 20.1,
    current: 84,
    ...old,
    remark: "Two of three pumps off",
  },
  { date: day("2021-05-11"), hot: 39.6, reference: 33.1, surrounding_air: 23.2, current: 182, ...old },
  { date: day("2022-04-26"), hot: 40.3, reference: 31.7, surrounding_air: 21.7, current: 191, ...old },
  {
    date: day("2023-05-16"),
    hot: 40.2,
    surrounding_air: 23.9,
    over: "ambient",
    current: 179,
    ...later,
    remark: "Middle phase not seen",
  },
  { date: day("2024-04-23"), hot: 41.1, reference: 30.9, surrounding_air: 21.1, current: 185, ...later },
  {
    date: day("2025-05-13"),
    hot: 150,
    reference: 34.0,
    surrounding_air: 24.4,
    current: 196,
    ...later,
    reading_is: "at least",
    remark: "Range left at its lowest",
  },
  { date: day("2026-04-14"), hot: 44.8, reference: 31.6, surrounding_air: 22.0, current: 190, ...later },
];

export function demoTrend(units: Units = "C"): BookDescription {
  return trendBook({
    title: "Trend, demo",
    about: ["Demonstration: the pump station, the joint and every reading are invented."],
    point: {
      asset_id: "PS2-F1-R",
      point: "incomer, joint of the right phase",
      site: "Pump station 2",
      over: "similar",
      common_load: 250,
      limit: 30,
      reflected: 22,
    },
    visits,
    units,
  });
}
