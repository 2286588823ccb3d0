import { AIR_TEMP, DISTANCE, HUMIDITY, PRESSURE, SOURCE_TEMP } from "../core/air/limits.js";
import { airTransmission, airTransmissionBlock } from "../core/air/transmission.js";
import { GreybodyError, requireInRange } from "../core/errors.js";
import type { Range } from "../core/errors.js";
import { numbersFor } from "./arena.js";
import { BAND_ARGUMENT } from "./bands.js";
import type { FunctionSpec } from "./contract.js";
import { defineCells, UNITS_ARGUMENT } from "./lift.js";

/**
 * Relative humidities that are taken for a fraction entered as per cent [-]: 0.05 to below 1 per cent does not occur in
 * the open, while 0.05 to below 1 is how half the sheets write 5 to 99 %. Below that, dry test gas is meant.
 */
const FRACTION_SLIP = { from: 0.0005, below: 0.01 };

const HUMIDITY_GIVEN: Range = { ...HUMIDITY, minExcluded: true };

const looksLikeFraction = (humidity: number): boolean =>
  humidity >= FRACTION_SLIP.from && humidity < FRACTION_SLIP.below;

const AIR_TRANSMISSION = defineCells({
  name: "AIR_TRANSMISSION",
  topic: "Transmission",
  summary: "Transmission of the air between object and camera, near the ground, for a band within 3.0 to 14.7 µm.",
  returns: "transmission, a fraction",
  args: [
    {
      name: "distance",
      quantity: "distance",
      help: "length of the path; outside -30 to 50 °C at most 30 m",
      range: DISTANCE,
      zeroIsBlank: true,
    },
    { name: "air_temp", quantity: "temperature", help: "temperature of the air on the path", range: AIR_TEMP },
    {
      name: "humidity",
      quantity: "percent",
      help: "relative humidity of the air in per cent, so that 1 is dry air and not saturated; 0.05 to below 1 is refused as a fraction, below that it is dry test gas",
      range: HUMIDITY_GIVEN,
      zeroIsBlank: true,
    },
    {
      name: "pressure",
      quantity: "pressure",
      help: "pressure of the air",
      optional: true,
      default: 101.325,
      range: PRESSURE,
      zeroIsBlank: true,
    },
    {
      name: "source_temp",
      quantity: "temperature",
      help: "temperature of what is looked at; it weighs the parts of the band",
      optional: true,
      default: 26.85,
      range: SOURCE_TEMP,
    },
    BAND_ARGUMENT,
    UNITS_ARGUMENT,
  ],
  result: "fraction",
  cell: (values) => {
    const humidity = values.number("humidity");
    // The core has 0 too; here it is an empty cell, and help and message tell one range.
    if (humidity > 1) requireInRange("humidity", humidity, HUMIDITY_GIVEN);
    if (looksLikeFraction(humidity)) {
      const hint = { key: "humidity-fraction", values: { meant: humidity * 100 * 100 } };
      throw new GreybodyError({
        code: "INVALID",
        argument: "humidity",
        given: humidity,
        hint,
      });
    }
    return airTransmission(
      {
        distance: values.number("distance"),
        airTemp: values.number("air_temp"),
        humidity,
        pressure: values.number("pressure"),
        sourceTemp: values.number("source_temp"),
      },
      values.band(),
    );
  },
  block: (column, band, count) => {
    const out = numbersFor(count);
    const humidity = column("humidity");
    try {
      airTransmissionBlock(
        {
          distance: column("distance"),
          airTemp: column("air_temp"),
          humidity,
          pressure: column("pressure"),
          sourceTemp: column("source_temp"),
        },
        band,
        out,
      );
    } catch (error) {
      // What holds for all rows is told by each of them.
      if (error instanceof GreybodyError) return out.fill(NaN);
      throw error;
    }
    for (let i = 0; i < count; i++)
      if (looksLikeFraction(typeof humidity === "number" ? humidity : (humidity[i] ?? NaN))) out[i] = NaN;
    return out;
  },
  example: { formula: "=GREY.AIR_TRANSMISSION(10,20,50)", shows: "0.986" },
  sources: ["mlawer-1997", "mlawer-2012", "lowtran7-1988", "wmo-8"],
});

export const transmissionFunctions: readonly FunctionSpec[] = [AIR_TRANSMISSION];
