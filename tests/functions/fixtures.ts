import type { Fixture } from "./fixture.js";
import { audit } from "./fixtures/audit.js";
import { check } from "./fixtures/check.js";
import { correction } from "./fixtures/correction.js";
import { gradeChance } from "./fixtures/grade-chance.js";
import { help } from "./fixtures/help.js";
import { load } from "./fixtures/load.js";
import { lookup } from "./fixtures/lookup.js";
import { measured } from "./fixtures/measured.js";
import { monteCarlo } from "./fixtures/monte-carlo.js";
import { optics } from "./fixtures/optics.js";
import { severity } from "./fixtures/severity.js";
import { transmission } from "./fixtures/transmission.js";
import { trend } from "./fixtures/trend.js";
import { uncertainty } from "./fixtures/uncertainty.js";
import { whatif } from "./fixtures/whatif.js";

/** One for each function of the catalogue; uniform.test.ts fails for a function that has none. */
export const fixtures: readonly Fixture[] = [
  ...correction,
  ...transmission,
  ...measured,
  ...optics,
  ...lookup,
  ...load,
  ...severity,
  ...gradeChance,
  ...uncertainty,
  ...monteCarlo,
  ...whatif,
  ...trend,
  ...audit,
  ...check,
  ...help,
];
