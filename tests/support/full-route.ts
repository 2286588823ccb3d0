/** A long electrical route for what is measured: the demo's readings over and over, each row with numbers of its own. */
import type { BookDescription } from "../../src/templates/contract.js";
import { routeBook } from "../../src/templates/route/book.js";
import { assets } from "../../src/templates/route/demo/assets.js";
import { job, surfaces, windows } from "../../src/templates/route/demo/plant.js";
import { readings } from "../../src/templates/route/demo/readings.js";

export function fullRoute(rows: number): BookDescription {
  const read = readings.filter(({ left }) => typeof left === "number");
  return routeBook({
    title: "A long route",
    about: [],
    job,
    assets,
    windows,
    surfaces,
    units: "C",
    rows: Array.from({ length: rows }, (_, row) => {
      const one = read[row % read.length]!;
      return { ...one, left: Number(one.left) + (row % 7) / 10 };
    }),
  });
}
