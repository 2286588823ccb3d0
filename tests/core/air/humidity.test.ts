import {
  absoluteHumidity,
  precipitableWater,
  saturationPressure,
  vapourPressure,
} from "../../../src/core/air/humidity.js";
import { refusal } from "../../support/refusal.js";
import { rowsOf } from "../../support/rows.js";

const kelvin = (t: number): number => t + 273.15;

describe("humidity, as the model's worked checks have it", () => {
  it.each(
    rowsOf("atmosphere/worked_checks.csv")
      .slice(0, 13)
      .map((row) => [`${row.T_air_C} °C ${row.RH} % ${row.d_m} m`, row] as const),
  )("%s", (_, row) => {
    const t = kelvin(Number(row.T_air_C));
    const humidity = Number(row.RH) / 100;
    expect(vapourPressure(t, humidity) / 100).toBeCloseTo(Number(row.e_hPa), 5);
    expect(absoluteHumidity(t, humidity) * 1000).toBeCloseTo(Number(row.rho_g_m3), 5);
    expect(precipitableWater(t, humidity, Number(row.d_m))).toBeCloseTo(Number(row.w_mm), 6);
  });

  it("is saturated at a humidity of 1 and dry at 0", () => {
    expect(vapourPressure(kelvin(20), 1)).toBe(saturationPressure(kelvin(20)));
    expect(vapourPressure(kelvin(20), 0)).toBe(0);
    expect(precipitableWater(kelvin(20), 0.5, 0)).toBe(0);
  });

  it("refuses a temperature that air near the ground does not have, and a humidity that cannot be", () => {
    expect(refusal(() => saturationPressure(kelvin(66)))).toMatchObject({ code: "INVALID", argument: "air_temp" });
    expect(refusal(() => saturationPressure(NaN)).argument).toBe("air_temp");
    expect(refusal(() => vapourPressure(kelvin(20), 1.2))).toMatchObject({
      argument: "humidity",
      hint: { key: "per-cent" },
    });
    expect(refusal(() => absoluteHumidity(kelvin(20), -0.1)).argument).toBe("humidity");
  });
});
