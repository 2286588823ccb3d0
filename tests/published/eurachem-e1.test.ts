/** Eurachem guide on uncertainty, example E.1, read where a translation quotes it: a half-width of 1.5 is a standard uncertainty of 0.87. */
import { standardUncertainty } from "../../src/core/uncertainty/inputs.js";

test("half-width 1.5 of a rectangle [secondary]: 0.87", () => {
  expect(Math.abs(standardUncertainty(1.5, "rectangular") - 0.87)).toBeLessThan(0.005);
});
