import type { FunctionSpec } from "./contract.js";
import { EXPLAIN, EXPLAIN_REPORT } from "./explain.js";
import { EXPLAIN_RISE } from "./explain-rise.js";

export const auditFunctions: readonly FunctionSpec[] = [EXPLAIN, EXPLAIN_REPORT, EXPLAIN_RISE];
