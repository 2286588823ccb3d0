/** An invented busbar chamber: three joints on a warm ground, one of them hot, drawn by a formula. */
import type { Units } from "../../functions/units.js";
import { day } from "../route/demo/moments.js";
import type { BookDescription } from "../contract.js";
import { gridBook } from "./book.js";

const SIZE = { rows: 120, columns: 160 } as const;

/** What is drawn: a ground that warms downwards, three round spots and a ripple that is always the same; in °C. */
const SPOTS = [
  { row: 40, column: 35, rise: 9.5, width: 11 },
  { row: 44, column: 80, rise: 31, width: 10 },
  { row: 41, column: 126, rise: 10.5, width: 11 },
] as const;

function drawing(units: Units): string {
  const spots = SPOTS.map(
    ({ row, column, rise, width }) => `${rise}*EXP(-((row-${row})^2+(column-${column})^2)/${2 * width * width})`,
  );
  const celsius = `26+row/40+${spots.join("+")}+0.15*SIN(row*1.7)*COS(column*2.3)`;
  return `=LET(row,SEQUENCE(${SIZE.rows}),column,SEQUENCE(1,${SIZE.columns}),ROUND(${units === "C" ? celsius : `1.8*(${celsius})+32`},1))`;
}

export function demoGrid(units: Units = "C"): BookDescription {
  return gridBook({
    title: "Grid, demo",
    about: [
      "Demonstration: the busbar chamber is invented, and its readings are drawn by a formula in the first cell of the block.",
    ],
    values: {
      image: "IR-0031",
      subject: "busbar chamber, three joints",
      date: day("2026-03-17"),
      emissivity: 0.92,
      reflected: 24,
      path_air: 23,
      distance: 1.5,
      surrounding_air: 25,
      above: 50,
    },
    size: SIZE,
    fill: drawing(units),
    boxes: [
      { name: "Joint, left", corners: [25, 20, 55, 50] },
      { name: "Joint, middle", corners: [25, 65, 60, 95] },
      { name: "Joint, right", corners: [25, 111, 55, 141] },
      { name: "Ground, below", corners: [100, 20, 118, 141] },
    ],
    differences: [
      { box: "Joint, middle", taken: "maximum", reference: "Joint, left", referenceTaken: "maximum" },
      { box: "Joint, right", taken: "maximum", reference: "Joint, left", referenceTaken: "maximum" },
      { box: "Joint, middle", taken: "mean", reference: "Joint, right", referenceTaken: "mean" },
      { box: "Joint, middle", taken: "maximum", reference: "air" },
    ],
    units,
  });
}
