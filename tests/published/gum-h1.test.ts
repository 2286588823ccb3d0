/**
 * JCGM 100:2008, H.1, an end gauge against a standard: inputs and u_c read where the documentation of an open-source library
 * for uncertainties quotes them; effective degrees of freedom, factor and expanded uncertainty from memory.
 */
import { coverageFactor, wholeFreedom } from "../../src/core/uncertainty/coverage.js";
import { firstOrder } from "../../src/core/uncertainty/gum.js";
import { rowsOf } from "../support/rows.js";

/** Length of the standard [nm], its expansion [1/K], deviation from 20 °C [K]. */
const [LENGTH, EXPANSION, DEVIATION] = [50_000_623, 11.5e-6, -0.1];
const uniform = (halfWidth: number): number => halfWidth / Math.sqrt(3);

// l = ls + d0 + d1 + d2 - ls·(δα·θ + αs·δθ), δα and δθ estimated as 0.
const terms = [
  { sensitivity: 1, standard: 25, freedom: 18 },
  { sensitivity: 1, standard: 5.8, freedom: 24 },
  { sensitivity: 1, standard: 3.9, freedom: 5 },
  { sensitivity: 1, standard: 6.7, freedom: 8 },
  { sensitivity: -LENGTH * DEVIATION, standard: uniform(1e-6), freedom: 50 },
  { sensitivity: -LENGTH * EXPANSION, standard: uniform(0.05), freedom: 2 },
  { sensitivity: 0, standard: uniform(2e-6) },
  { sensitivity: 0, standard: 0.41 },
];
const result = firstOrder(terms);

const rows = rowsOf("radiometry/check_values.csv").filter(({ group }) => group === "GUM H.1");
const published = (item: string): readonly [string, number] => {
  const row = rows.find((one) => one.item?.startsWith(item) === true);
  return [`${row?.item ?? item} (${row?.status ?? "no row"})`, Number(row?.published)];
};

test.each([
  [published("u_c"), Math.round(result.combined)],
  [published("nu_eff"), wholeFreedom(result.freedom)],
  [published("U99"), coverageFactor(0.99, result.freedom) * result.combined],
] as const)("%s", ([, expected], found) => {
  // 93 nm is 2.92 times the rounded 32 nm.
  expect(Math.abs(found - expected)).toBeLessThan(expected === 93 ? 1 : 1e-9);
});

test("factor 2.92 at 99 % (from memory)", () => {
  expect(Math.abs(coverageFactor(0.99, result.freedom) - 2.92)).toBeLessThan(0.005);
});

test("contributions 25, 5.8, 3.9, 6.7, 2.88679, 16.599, 0, 0 nm (read)", () => {
  const expected = [25, 5.8, 3.9, 6.7, 2.88679, 16.599, 0, 0];
  for (const [i, contribution] of result.contributions.entries()) {
    expect(Math.abs(Math.abs(contribution) - expected[i]!)).toBeLessThan(6e-4);
  }
});
