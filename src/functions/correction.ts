import { correctBlock } from "../core/correction/block.js";
import { apparent, correct } from "../core/correction/correct.js";
import { GreybodyError } from "../core/errors.js";
import { TEMPERATURE } from "../core/limits.js";
import { radiance, temperature } from "../core/planck/exact.js";
import { requireTemperature } from "../core/correction/settings.js";
import { numbersFor } from "./arena.js";
import { BAND_ARGUMENT } from "./bands.js";
import type { FunctionSpec } from "./contract.js";
import { defineCells, UNITS_ARGUMENT } from "./lift.js";
import type { BlockColumn } from "./lift.js";
import { mapSettings, READING_ARGUMENTS, SETTINGS_ARGUMENTS, settingsOf } from "./settings-arguments.js";

const CORRECTED = defineCells({
  name: "CORRECTED",
  topic: "Correction",
  summary:
    "Temperature of an object from its apparent temperature: emissivity, reflection, air and a window taken out.",
  returns: "corrected temperature",
  args: [...READING_ARGUMENTS, BAND_ARGUMENT, UNITS_ARGUMENT],
  result: "temperature",
  cell: (values) => correct(values.number("apparent"), settingsOf(values), values.band()).temperature,
  block: (column, band, count) => {
    const readings = column("apparent");
    const apparents = typeof readings === "number" ? numbersFor(count).fill(readings) : readings;
    const out = { temperature: numbersFor(count) };
    correctBlock(apparents, mapSettings<BlockColumn>(column), band, out);
    return out.temperature;
  },
  example: { formula: "=GREY.CORRECTED(58,0.85,22,0.98,20)", shows: "64.1" },
  sources: ["iso-18434-1-2008", "codata-2018", "widger-woodall-1976"],
});

const APPARENT = defineCells({
  name: "APPARENT",
  topic: "Correction",
  summary: "Apparent temperature that an object shows: CORRECTED the other way round.",
  returns: "apparent temperature",
  args: [
    { name: "object_temp", quantity: "temperature", help: "temperature of the object", range: TEMPERATURE },
    ...SETTINGS_ARGUMENTS,
    BAND_ARGUMENT,
    UNITS_ARGUMENT,
  ],
  result: "temperature",
  cell: (values) => apparent(values.number("object_temp"), settingsOf(values), values.band()),
  example: { formula: '=GREY.APPARENT(80,0.95,25,1,,0.55,25,,,,"8-14")', shows: "56.5" },
  sources: ["iso-18434-1-2008", "codata-2018"],
});

const RADIANCE = defineCells({
  name: "RADIANCE",
  topic: "Correction",
  summary: "Radiance of a black body in the camera's band.",
  returns: "radiance in W/(m²·sr)",
  args: [
    { name: "temp", quantity: "temperature", help: "temperature of the black body", range: TEMPERATURE },
    BAND_ARGUMENT,
    UNITS_ARGUMENT,
  ],
  result: "radiance",
  cell: (values) => {
    const temp = values.number("temp");
    requireTemperature("temp", temp);
    return radiance(values.band(), temp);
  },
  example: { formula: "=GREY.RADIANCE(25)", shows: "57.61" },
  sources: ["codata-2018", "widger-woodall-1976", "chang-rhee-1984"],
});

const RADIANCE_TEMP = defineCells({
  name: "RADIANCE_TEMP",
  topic: "Correction",
  summary: "Temperature of the black body with a radiance: RADIANCE the other way round.",
  returns: "temperature",
  args: [
    {
      name: "radiance",
      quantity: "radiance",
      help: "radiance in the band",
      range: { min: 0, minExcluded: true },
      zeroIsBlank: true,
    },
    BAND_ARGUMENT,
    UNITS_ARGUMENT,
  ],
  result: "temperature",
  cell: (values) => {
    const given = values.number("radiance");
    if (!(given > 0))
      throw new GreybodyError({ code: "INVALID", argument: "radiance", given, allowed: { min: 0, minExcluded: true } });
    const found = temperature(values.band(), given);
    // Beyond what a double can hold of it, either way.
    if (Number.isNaN(found)) throw new GreybodyError({ code: "INVALID", argument: "radiance", given });
    return found;
  },
  example: { formula: "=GREY.RADIANCE_TEMP(100)", shows: "64.0" },
  sources: ["codata-2018", "widger-woodall-1976"],
});

export const correctionFunctions: readonly FunctionSpec[] = [CORRECTED, APPARENT, RADIANCE, RADIANCE_TEMP];
