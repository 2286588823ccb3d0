/**
 * PsychroLib (MIT) as a second opinion on humidity: saturation pressure after ASHRAE Handbook, Fundamentals (2017),
 * chapter 1, equation 6 (Hyland and Wexler). Ours is the Magnus form of WMO-No. 8, simpler and up to 0.3 % lower between
 * 15 and 35 °C: that is the tolerance, 0…60 °C, where WMO gives it. Below freezing ASHRAE has the pressure over ice and
 * ours stays over water, as hygrometers and the air model have it: not compared.
 */
import psychrolib from "psychrolib";
import { saturationPressure, vapourPressure } from "../../src/core/air/humidity.js";

psychrolib.SetUnitSystem(psychrolib.SI);

describe("PsychroLib, saturation over water", () => {
  it.each([0.5, 5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60])("%d °C within 0.3 %%", (t) => {
    expect(Math.abs(saturationPressure(t + 273.15) / psychrolib.GetSatVapPres(t) - 1)).toBeLessThan(0.003);
    expect(Math.abs(vapourPressure(t + 273.15, 0.4) / psychrolib.GetVapPresFromRelHum(t, 0.4) - 1)).toBeLessThan(0.003);
  });

  it("lies over water below freezing, above the pressure over ice", () => {
    expect(saturationPressure(263.15)).toBeGreaterThan(1.08 * psychrolib.GetSatVapPres(-10));
  });
});
