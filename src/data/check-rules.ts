import rules from "./check-rules.json";
import type { Provenance } from "./provenance.js";

/** A threshold of CHECK: where it is passed, a row has a finding. */
export interface CheckRule extends Provenance {
  readonly value: number;
  readonly unit: "-" | "K" | "m/s" | "h" | "min" | "d";
  readonly what: string;
}

export const CHECK_RULES = rules as Readonly<Record<keyof typeof rules, CheckRule>>;
