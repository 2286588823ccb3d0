import type { FunctionSpec } from "./contract.js";
import { ABOUT } from "./about.js";
import { auditFunctions } from "./audit.js";
import { CHECK } from "./check.js";
import { correctionFunctions } from "./correction.js";
import { loadFunctions } from "./load.js";
import { materialFunctions } from "./materials.js";
import { measuredFunctions } from "./measured.js";
import { NEXT_DUE } from "./next-due.js";
import { opticsFunctions } from "./optics.js";
import { limitFunctions } from "./part-limits.js";
import { PRIORITY } from "./priority.js";
import { RESTATE } from "./restate.js";
import { settingFunctions } from "./setting-for.js";
import { severityFunctions } from "./severity.js";
import { transmissionFunctions } from "./transmission.js";
import { TREND } from "./trend.js";
import { uncertaintyFunctions } from "./uncertainty.js";
import { windFunctions } from "./wind.js";
import { windowFunctions } from "./window.js";

/** The one list of worksheet functions, in the order in which they are shown. */
export const catalogue: readonly FunctionSpec[] = [
  ...correctionFunctions,
  ...transmissionFunctions,
  ...windowFunctions,
  ...measuredFunctions,
  ...materialFunctions,
  ...opticsFunctions,
  ...loadFunctions,
  ...windFunctions,
  ...severityFunctions,
  ...limitFunctions,
  PRIORITY,
  ...uncertaintyFunctions,
  ...settingFunctions,
  RESTATE,
  ...auditFunctions,
  TREND,
  NEXT_DUE,
  CHECK,
  ABOUT,
];

/** The function of that name (without the namespace, any case), or undefined. */
export function findFunction(name: string): FunctionSpec | undefined {
  return catalogue.find((spec) => spec.name === name.toUpperCase());
}
