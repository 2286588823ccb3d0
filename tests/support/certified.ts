import { rowsOf } from "./rows.js";

/** Observations and certified values of a regression. */
export interface Certified {
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** What the source prints for a quantity. */
  readonly value: (quantity: string) => number;
}

const SETS: Readonly<Record<string, string>> = {
  nist_norris: "NIST Norris",
  nist_pontius: "NIST Pontius",
  nist_noint1: "NIST NoInt1",
  gum_h3: "GUM H.3",
};

/** A set under tests/data/regression. */
export function certified(file: string): Certified {
  const columns = rowsOf(`regression/${file}.csv`).map((row) => Object.values(row).map(Number));
  const published = rowsOf("regression/certified.csv").filter((row) => Object.values(row)[0] === SETS[file]);
  return {
    x: columns.map(([x = NaN]) => x),
    y: columns.map(([, y = NaN]) => y),
    value: (quantity) => {
      const row = published.find((one) => Object.values(one)[1] === quantity);
      if (!row?.published) throw new Error(`${file} has no ${quantity}`);
      return Number(row.published);
    },
  };
}
