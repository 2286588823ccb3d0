import { AIR_HINTS } from "./hints/air.js";
import { AUDIT_HINTS } from "./hints/audit.js";
import { CORRECTION_HINTS } from "./hints/correction.js";
import { LOAD_HINTS } from "./hints/load.js";
import { LOOKUP_HINTS } from "./hints/lookup.js";
import { MEASURED_HINTS } from "./hints/measured.js";
import { MONTE_CARLO_HINTS } from "./hints/monte-carlo.js";
import { SEVERITY_HINTS } from "./hints/severity.js";
import { SHARED_HINTS } from "./hints/shared.js";
import { TREND_HINTS } from "./hints/trend.js";
import { UNCERTAINTY_HINTS } from "./hints/uncertainty.js";
import { WHATIF_HINTS } from "./hints/whatif.js";
import type { Hints } from "./hints/words.js";

/** What each hint key of the core says to the person at the sheet. */
export const HINTS: Hints = {
  ...SHARED_HINTS,
  ...AUDIT_HINTS,
  ...CORRECTION_HINTS,
  ...AIR_HINTS,
  ...LOAD_HINTS,
  ...LOOKUP_HINTS,
  ...MEASURED_HINTS,
  ...MONTE_CARLO_HINTS,
  ...SEVERITY_HINTS,
  ...TREND_HINTS,
  ...UNCERTAINTY_HINTS,
  ...WHATIF_HINTS,
};
