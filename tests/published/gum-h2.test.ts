/**
 * JCGM 100:2008, H.2, resistance, reactance and impedance from voltage, current and phase angle that go together: read where
 * the documentation of an open-source library for uncertainties quotes it.
 */
import { correlationMatrix } from "../../src/core/uncertainty/correlation.js";
import { correlationOfResults, firstOrder } from "../../src/core/uncertainty/gum.js";
import type { Term } from "../../src/core/uncertainty/gum.js";
import { rowsOf } from "../support/rows.js";

/** Volt, ampere, radian. */
const [V, I, PHI] = [4.999, 19.661e-3, 1.04446];
const [cos, sin, Z] = [Math.cos(PHI), Math.sin(PHI), V / I];
const correlation = correlationMatrix(
  ["V", "I", "phi"],
  [
    { one: "V", other: "I", r: -0.36 },
    { one: "phi", other: "V", r: 0.86 },
    { one: "I", other: "phi", r: -0.65 },
  ],
);
const termsOf = (perVolt: number, perAmpere: number, perRadian: number): Term[] => [
  { sensitivity: perVolt, standard: 3.2e-3 },
  { sensitivity: perAmpere, standard: 9.5e-6 },
  { sensitivity: perRadian, standard: 7.5e-4 },
];
const results = {
  R: { value: Z * cos, terms: termsOf(cos / I, (-Z * cos) / I, -Z * sin) },
  X: { value: Z * sin, terms: termsOf(sin / I, (-Z * sin) / I, Z * cos) },
  Z: { value: Z, terms: termsOf(1 / I, -Z / I, 0) },
};
type Name = keyof typeof results;

/** What a row's item names: R, u(R) or r(R,X). */
function found(item: string): number {
  const [one, other] = item.replace(/^[ur]\(|\)$/g, "").split(",") as [Name, Name?];
  const { value, terms } = results[one];
  if (other) return correlationOfResults(terms, results[other].terms, correlation);
  return item.startsWith("u(") ? firstOrder(terms, correlation).combined : value;
}

const rows = rowsOf("radiometry/check_values.csv").filter(({ group }) => group === "GUM H.2");

test("has its nine values", () => {
  expect(rows).toHaveLength(9);
});

test.each(rows.map((row) => [row.item ?? "", row.published ?? "", row.status ?? ""] as const))(
  "%s is %s (%s)",
  (item, published) => {
    // To the last digit printed.
    const digit = 10 ** -(published.split(".")[1] ?? "").length;
    expect(Math.abs(found(item) - Number(published))).toBeLessThan(digit / 2);
  },
);

test("no effective degrees of freedom where inputs go together", () => {
  const counted = results.R.terms.map((term) => ({ ...term, freedom: 4 }));
  expect(firstOrder(counted, correlation).freedom).toBe(Infinity);
  expect(firstOrder(counted).freedom).toBeGreaterThanOrEqual(4);
});
