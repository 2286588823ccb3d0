import type { Range } from "../errors.js";

/** A coverage probability [-]. */
export const COVERAGE: Range = { min: 0, minExcluded: true, max: 1, maxExcluded: true };
