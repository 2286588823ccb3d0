/** The library's front door: the core, in SI (K, m, fractions). */
export { correct, apparent, sensitivities } from "./core/correction/correct.js";
export type { Corrected, Sensitivities } from "./core/correction/correct.js";
export { correctBlock } from "./core/correction/block.js";
export type { CorrectedBlock, SettingsColumns } from "./core/correction/block.js";
export type { Column } from "./core/correction/operands.js";
export type { Settings } from "./core/correction/settings.js";
export { DEFAULT_BAND, flatBand, responseBand } from "./core/planck/band.js";
export type { Band, Segment } from "./core/planck/band.js";
export { radiance, radianceSlope, temperature } from "./core/planck/exact.js";
export { tableFor } from "./core/planck/tables.js";
export { GreybodyError } from "./core/errors.js";
export type { ErrorCode, ErrorDetails, Hint, Range } from "./core/errors.js";
