import type { FunctionSpec } from "./contract.js";
import { EXPLAIN } from "./explain.js";
import { EXPLAIN_REPORT } from "./explain-report.js";
import { EXPLAIN_RISE } from "./explain-rise.js";
import { AUDIT } from "./audit-call.js";

export const auditFunctions: readonly FunctionSpec[] = [EXPLAIN, EXPLAIN_REPORT, EXPLAIN_RISE, AUDIT];
