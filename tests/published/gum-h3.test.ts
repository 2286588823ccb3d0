/** JCGM 100:2008, H.3: the calibration line of a thermometer, b = y1 + y2·(t − 20 °C), read where a library quotes it. */
import { leastSquares } from "../../src/core/trend/least-squares.js";
import { trend, YEAR } from "../../src/core/trend/trend.js";
import { certified } from "../support/certified.js";

describe("GUM H.3 [found, secondary: quoted by a calibration laboratory's library]", () => {
  const { x, y, value } = certified("gum_h3");
  const away = x.map((t) => t - 20);
  const { coefficients, covariance, residual, freedom } = leastSquares([away.map(() => 1), away], y);
  const [intercept = NaN, slope = NaN] = coefficients;
  const [[varIntercept = NaN, between = NaN] = [], [, varSlope = NaN] = []] = covariance;

  it("the line", () => {
    expect(intercept).toBeCloseTo(value("intercept at 20 C"), 12);
    expect(slope).toBeCloseTo(value("slope"), 14);
    expect(freedom).toBe(9);
    expect(freedom * residual ** 2).toBeCloseTo(value("sum sq residuals"), 13);
  });

  it("its uncertainties and their correlation, to the digits printed", () => {
    expect(Math.abs(Math.sqrt(varIntercept) - value("u(intercept)"))).toBeLessThanOrEqual(0.5e-4);
    expect(Math.sqrt(varSlope)).toBeCloseTo(value("u(slope)"), 14);
    expect(Math.abs(between / Math.sqrt(varIntercept * varSlope) - value("r"))).toBeLessThanOrEqual(0.005);
  });

  it("the correction at 30 °C", () => {
    expect(Math.abs(intercept + 10 * slope - value("b(30)"))).toBeLessThanOrEqual(0.5e-4);
    const variance = varIntercept + 100 * varSlope + 20 * between;
    expect(Math.abs(Math.sqrt(variance) - value("u(b(30))"))).toBeLessThanOrEqual(0.5e-4);
  });

  it("the trend takes the same line, with Student's t of 9 degrees of freedom at 0.95", () => {
    const found = trend(x, y, 0.95);
    expect(found.slope / YEAR).toBeCloseTo(value("slope"), 14);
    // t = 2.262 in the table of JCGM 100:2008, G.2 (2.26).
    expect(found.uncertainty / YEAR / value("u(slope)")).toBeCloseTo(2.26, 2);
    expect(found.verdict).toBe("rising");
  });
});
