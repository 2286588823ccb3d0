import { ZERO_CELSIUS } from "./constants.js";
import type { Range } from "./errors.js";

/** What an input can physically be, in SI; the catalogue shows these, the core refuses by them. */
export const TEMPERATURE: Range = { min: 0, minExcluded: true, max: 10000 + ZERO_CELSIUS };
/** What a result can physically be: an input's most, which rounding may pass. */
export const HIGHEST_ANSWER = 10000 + ZERO_CELSIUS + 1e-6;
export const EMISSIVITY: Range = { min: 0, minExcluded: true, max: 1 };
export const TRANSMISSION: Range = { min: 0, minExcluded: true, max: 1 };
export const REFLECTANCE: Range = { min: 0, max: 1, maxExcluded: true };
/** Transmission and reflectance of a window may exceed 1 together by no more than rounding does. */
export const SUM_SLACK = 1e-9;
