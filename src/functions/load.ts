import { TEMPERATURE } from "../core/limits.js";
import { limitAtLoad, RATED_RISE } from "../core/loading/limit-at-load.js";
import { LOAD, REFERENCE_LOAD, RISE } from "../core/loading/load.js";
import { relativeRise } from "../core/loading/relative-rise.js";
import { riseAtLoad } from "../core/loading/rise-at-load.js";
import { shareOfLimit } from "../core/loading/share-of-limit.js";
import type { ArgumentSpec, FunctionSpec } from "./contract.js";
import { defineCells, UNITS_ARGUMENT } from "./lift.js";
import { PHASE_RISE } from "./phase-rise.js";
import { EXPONENT_ARGUMENT, MINIMUM_LOAD_ARGUMENT, SURROUNDING_AIR } from "./load-arguments.js";

const load = (name: string, help: string): ArgumentSpec => ({ name, quantity: "current", help, range: LOAD });
const referenceLoad = (name: string, help: string): ArgumentSpec => ({
  name,
  quantity: "current",
  help,
  range: REFERENCE_LOAD,
  zeroIsBlank: true,
});
const temp = (name: string, help: string): ArgumentSpec => ({
  name,
  quantity: "temperature",
  help,
  range: TEMPERATURE,
});

const RISE_AT_LOAD = defineCells({
  name: "RISE_AT_LOAD",
  topic: "Load",
  summary: 'A rise as it would be at another load: rise·(reference_load/load)^exponent. Read it as "at least".',
  returns: "rise, in the unit of the rise given",
  args: [
    { name: "rise", quantity: "difference", help: "rise as found", range: RISE },
    load("load", "load as found, in the unit of reference_load"),
    referenceLoad("reference_load", "load to project to, such as the highest expected"),
    EXPONENT_ARGUMENT,
    MINIMUM_LOAD_ARGUMENT,
  ],
  result: "difference",
  cell: (values) =>
    riseAtLoad({
      rise: values.number("rise"),
      load: values.number("load"),
      referenceLoad: values.number("reference_load"),
      exponent: values.number("exponent"),
      minimumLoad: values.number("minimum_load"),
    }),
  example: { formula: "=GREY.RISE_AT_LOAD(12,45,100,1.6)", shows: "43.1" },
  sources: ["nfpa-70b-2023", "ieee-c37-010"],
});

const LIMIT_AT_LOAD = defineCells({
  name: "LIMIT_AT_LOAD",
  topic: "Load",
  summary:
    "Temperature a sound part may show at today's load and air: air + rated_rise·(load/rated_load)^exponent, at most maximum_temp.",
  returns: "temperature",
  args: [
    {
      name: "rated_rise",
      quantity: "difference",
      help: "rise permitted at the rated load",
      range: RATED_RISE,
      zeroIsBlank: true,
    },
    load("load", "load as found, in the unit of rated_load"),
    referenceLoad("rated_load", "rated load"),
    SURROUNDING_AIR,
    {
      name: "maximum_temp",
      quantity: "temperature",
      help: "highest temperature permitted; needed above the rated load and in air above 40 °C",
      optional: true,
      range: TEMPERATURE,
    },
    EXPONENT_ARGUMENT,
    MINIMUM_LOAD_ARGUMENT,
    UNITS_ARGUMENT,
  ],
  result: "temperature",
  cell: (values) => {
    const maximumTemp = values.optional("maximum_temp");
    return limitAtLoad({
      ratedRise: values.number("rated_rise"),
      load: values.number("load"),
      ratedLoad: values.number("rated_load"),
      surroundingAir: values.number("surrounding_air"),
      exponent: values.number("exponent"),
      minimumLoad: values.number("minimum_load"),
      ...(maximumTemp === undefined ? {} : { maximumTemp }),
    });
  },
  example: { formula: "=GREY.LIMIT_AT_LOAD(65,120,200,28,,1.6)", shows: "56.7" },
  sources: ["ieee-c37-010", "iec-60694-1996"],
});

const SHARE_OF_LIMIT = defineCells({
  name: "SHARE_OF_LIMIT",
  topic: "Load",
  summary: "How much of the permitted rise a part shows: (temp - air)/(limit - air).",
  returns: "share, a fraction; 1 is the limit",
  args: [
    temp("temp", "corrected temperature of the part"),
    temp("limit", "temperature it may reach"),
    SURROUNDING_AIR,
    UNITS_ARGUMENT,
  ],
  result: "fraction",
  cell: (values) =>
    shareOfLimit({
      temp: values.number("temp"),
      limit: values.number("limit"),
      surroundingAir: values.number("surrounding_air"),
    }),
  example: { formula: "=GREY.SHARE_OF_LIMIT(80,90,40)", shows: "0.8" },
  sources: ["iec-60694-1996"],
});

const RELATIVE_RISE = defineCells({
  name: "RELATIVE_RISE",
  topic: "Load",
  summary: "Relative rise (hot - normal)/(hot - air): to first order it does not depend on the load.",
  returns: "relative rise, a fraction",
  args: [
    temp("hot", "corrected temperature of the hotter part"),
    temp("normal", "corrected temperature of a sound, like part"),
    SURROUNDING_AIR,
    { name: "hot_load", quantity: "current", help: "load of the hotter part", optional: true, range: LOAD },
    { name: "normal_load", quantity: "current", help: "load of the sound part", optional: true, range: LOAD },
    UNITS_ARGUMENT,
  ],
  result: "fraction",
  cell: (values) => {
    const hotLoad = values.optional("hot_load");
    const normalLoad = values.optional("normal_load");
    return relativeRise({
      hot: values.number("hot"),
      normal: values.number("normal"),
      surroundingAir: values.number("surrounding_air"),
      ...(hotLoad === undefined ? {} : { hotLoad }),
      ...(normalLoad === undefined ? {} : { normalLoad }),
    });
  },
  example: { formula: "=GREY.RELATIVE_RISE(78,46,25)", shows: "0.604" },
  sources: ["dlt-664-2016"],
});

export const loadFunctions: readonly FunctionSpec[] = [
  RISE_AT_LOAD,
  LIMIT_AT_LOAD,
  SHARE_OF_LIMIT,
  PHASE_RISE,
  RELATIVE_RISE,
];
