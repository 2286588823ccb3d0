import { correctBlock } from "../../src/core/correction/block.js";
import { DEFAULT_BAND } from "../../src/core/planck/band.js";
import { findFunction } from "../../src/functions/catalogue.js";
import type { Input } from "../../src/functions/contract.js";
import { column, range, ROWS } from "./columns.js";
import { compare } from "./ratio.js";

const apparent = column(290, 400);
const emissivity = column(0.6, 0.98);
const reflected = column(285, 310);
const airTransmission = column(0.9, 0.999);
const airTemp = column(283, 303);
const window = {
  windowTransmission: column(0.5, 0.9),
  windowTemp: column(285, 310),
  windowReflectance: column(0.01, 0.08),
  outerReflected: column(285, 305),
  outerAirTransmission: column(0.95, 0.999),
};
const out = { temperature: new Float64Array(ROWS) };
const correct = (settings: Parameters<typeof correctBlock>[1]) => () =>
  correctBlock(apparent, settings, DEFAULT_BAND, out);

const inSheet = [range(20, 120), range(0.6, 0.98), range(15, 30), range(0.9, 0.99), range(15, 30)];
const sheetWindow = [range(0.5, 0.9), range(15, 30), range(0.01, 0.08), range(15, 30), range(0.95, 0.99)];
const evaluate = findFunction("CORRECTED")?.evaluate ?? (() => []);
const sheet = (inputs: readonly Input[]) => () => evaluate(inputs);

await compare("Correction", [
  {
    name: "settings the same for all",
    most: 0.9,
    run: correct({ emissivity: 0.85, reflected: 295, airTransmission: 0.98, airTemp: 293 }),
  },
  {
    name: "emissivity and reflected as columns",
    most: 1.4,
    run: correct({ emissivity, reflected, airTransmission: 0.98, airTemp: 293 }),
  },
  {
    name: "every setting a column, checked",
    most: 4,
    run: correct({ emissivity, reflected, airTransmission, airTemp }),
  },
  {
    name: "through a window, ten columns",
    most: 4,
    run: correct({ emissivity, reflected, airTransmission, airTemp, ...window }),
  },
  { name: "worksheet in and out, every setting a column", most: 6, run: sheet(inSheet) },
  {
    name: "worksheet in and out, ten columns (no limit set)",
    most: Infinity,
    run: sheet([...inSheet, ...sheetWindow]),
  },
]);
