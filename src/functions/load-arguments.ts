import { AIR_TEMP } from "../core/air/limits.js";
import { EXPONENT, MINIMUM_LOAD } from "../core/loading/load.js";
import { RULES } from "../data/rules.js";
import type { ArgumentSpec } from "./contract.js";

/** The air that a rise is over; not the air of the path. */
export const SURROUNDING_AIR: ArgumentSpec = {
  name: "surrounding_air",
  quantity: "temperature",
  help: "temperature of the air the rise is over: room, enclosure or outdoors, not the air of the path",
  range: AIR_TEMP,
};

export const EXPONENT_ARGUMENT: ArgumentSpec = {
  name: "exponent",
  quantity: "number",
  help: "exponent of the current that the rise follows, as a rule 1.6 to 2",
  optional: true,
  default: RULES.exponent.value,
  range: EXPONENT,
  zeroIsBlank: true,
};

export const MINIMUM_LOAD_ARGUMENT: ArgumentSpec = {
  name: "minimum_load",
  quantity: "fraction",
  help: "smallest share of the reference load that is answered for",
  optional: true,
  default: RULES.minimum_load.value,
  range: MINIMUM_LOAD,
  zeroIsBlank: true,
};
