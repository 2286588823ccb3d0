import { exp2InPlace } from "../../../src/core/air/exp2.js";

const exp2 = (power: number): number => {
  const values = Float64Array.of(power, 3);
  exp2InPlace(values, 1);
  expect(values[1]).toBe(3);
  return values[0]!;
};

describe("2 to a power", () => {
  it("is within 1e-15 of it, over its whole range", () => {
    const powers = Float64Array.from({ length: 511_800 }, (_, i) => (i - 255_900) / 1000 + 1e-4 / 3);
    const values = powers.slice();
    exp2InPlace(values, values.length);
    const worst = values.reduce((most, value, i) => Math.max(most, Math.abs(value / 2 ** powers[i]! - 1)), 0);
    expect(worst).toBeLessThan(1e-15);
    for (const power of [1e-300, -1e-300, 1 / 256, -1 / 256, 0.99999999999]) {
      expect(Math.abs(exp2(power) / 2 ** power - 1)).toBeLessThan(1e-15);
    }
  });
  it("is exact at whole powers, 0 among them", () => {
    for (let power = -256; power < 256; power++) expect(exp2(power)).toBe(2 ** power);
  });
  it.each([NaN, 256, -257, Infinity])("is NaN outside: %d", (power) => {
    expect(exp2(power)).toBeNaN();
  });
});
