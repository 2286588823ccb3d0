import { RISE } from "../core/loading/load.js";
import { riseAtWind, WIND, WIND_EXPONENT } from "../core/loading/rise-at-wind.js";
import { RULES } from "../data/rules.js";
import type { FunctionSpec } from "./contract.js";
import { defineCells, UNITS_ARGUMENT } from "./lift.js";

const RISE_AT_WIND = defineCells({
  name: "RISE_AT_WIND",
  topic: "Load",
  summary:
    "A rise as it would be in another wind, of bare small parts seen directly: rise·(wind/reference_wind)^exponent. Advice, never graded as found.",
  returns: "rise",
  args: [
    { name: "rise", quantity: "difference", help: "rise over the air as found", range: RISE },
    {
      name: "wind",
      quantity: "speed",
      help: "wind at the target as found; answered for from 1 to 7 m/s (2.24 to 15.7 mph)",
      range: WIND,
    },
    {
      name: "reference_wind",
      quantity: "speed",
      help: "wind to bring the rise to, from 1 to 7 m/s; calm is not defined",
      optional: true,
      default: RULES.wind_least.value,
      range: WIND,
    },
    {
      name: "exponent",
      quantity: "number",
      help: "power of the wind with which the rise falls; 0.47 for the smallest parts to 0.62 for large ones",
      optional: true,
      default: RULES.wind_exponent.value,
      range: WIND_EXPONENT,
      zeroIsBlank: true,
    },
    UNITS_ARGUMENT,
  ],
  result: "difference",
  cell: (values) =>
    riseAtWind({
      rise: values.number("rise"),
      wind: values.number("wind"),
      referenceWind: values.number("reference_wind"),
      exponent: values.number("exponent"),
    }),
  example: { formula: "=GREY.RISE_AT_WIND(10,4)", shows: "21.1" },
  sources: ["hilpert-1933", "churchill-bernstein-1977", "epri-1017693"],
});

export const windFunctions: readonly FunctionSpec[] = [RISE_AT_WIND];
