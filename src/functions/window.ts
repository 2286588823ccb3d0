import { TEMPERATURE } from "../core/limits.js";
import { windowTransmission, windowTransmissionPair } from "../core/window/transmission.js";
import { BAND_ARGUMENT } from "./bands.js";
import type { ArgumentSpec, FunctionSpec } from "./contract.js";
import { defineCells, UNITS_ARGUMENT } from "./lift.js";
import { OUTER_REFLECTED_ARGUMENT, WINDOW_REFLECTANCE_ARGUMENT } from "./settings-arguments.js";

const reading = (name: string, help: string): ArgumentSpec => ({
  name,
  quantity: "temperature",
  help: `apparent temperature ${help}`,
  range: TEMPERATURE,
});

const WINDOW_TRANSMISSION = defineCells({
  name: "WINDOW_TRANSMISSION",
  topic: "Transmission",
  summary:
    "Transmission of a window from one target read without it and through it; target and window at least 10 K apart, better 20 K.",
  returns: "transmission, a fraction",
  args: [
    reading("reading_without", "of the target without the window, emissivity and transmission at 1"),
    reading("reading_with", "of the same target through the window, from the same place"),
    {
      name: "window_temp",
      quantity: "temperature",
      help: "temperature of the window; where it is not known take WINDOW_TRANSMISSION_PAIR",
      range: TEMPERATURE,
    },
    WINDOW_REFLECTANCE_ARGUMENT,
    OUTER_REFLECTED_ARGUMENT,
    BAND_ARGUMENT,
    UNITS_ARGUMENT,
  ],
  result: "fraction",
  cell: (values) => {
    const outerReflected = values.optional("outer_reflected");
    return windowTransmission(
      {
        readingWithout: values.number("reading_without"),
        readingWith: values.number("reading_with"),
        windowTemp: values.number("window_temp"),
        windowReflectance: values.number("window_reflectance"),
        ...(outerReflected === undefined ? {} : { outerReflected }),
      },
      values.band(),
    );
  },
  example: { formula: "=GREY.WINDOW_TRANSMISSION(90,68,25)", shows: "0.606" },
  sources: ["astm-e1897-14", "iso-18434-1-2008"],
});

const WINDOW_TRANSMISSION_PAIR = defineCells({
  name: "WINDOW_TRANSMISSION_PAIR",
  topic: "Transmission",
  summary:
    "Transmission of a window from a hot and a cold target, each read without it and through it: the window's temperature falls out.",
  returns: "transmission, a fraction",
  args: [
    reading("hot_without", "of the hot target without the window, emissivity and transmission at 1"),
    reading("hot_through", "of the hot target through the window"),
    reading("cold_without", "of the cold target without the window, at least 10 K from the hot one"),
    reading("cold_through", "of the cold target through the window"),
    BAND_ARGUMENT,
    UNITS_ARGUMENT,
  ],
  result: "fraction",
  cell: (values) =>
    windowTransmissionPair(
      {
        hotWithout: values.number("hot_without"),
        hotThrough: values.number("hot_through"),
        coldWithout: values.number("cold_without"),
        coldThrough: values.number("cold_through"),
      },
      values.band(),
    ),
  example: { formula: "=GREY.WINDOW_TRANSMISSION_PAIR(90,68,30,28.5)", shows: "0.601" },
  sources: ["astm-e1897-14", "iso-18434-1-2008"],
});

export const windowFunctions: readonly FunctionSpec[] = [WINDOW_TRANSMISSION, WINDOW_TRANSMISSION_PAIR];
