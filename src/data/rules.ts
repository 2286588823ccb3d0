import rules from "./rules.json";
import type { Provenance } from "./provenance.js";

/** A number that a rule of the trade, or we, put on what is answered. */
export interface Rule extends Provenance {
  readonly value: number;
  readonly unit: "-" | "K" | "°C" | "m/s" | "µm";
  readonly what: string;
}

export const RULES = rules as Readonly<Record<keyof typeof rules, Rule>>;
