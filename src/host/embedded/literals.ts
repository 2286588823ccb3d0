import { tokenize } from "../tokens.js";

/**
 * The formula with every numeric literal in its shortest form that reads back to the same double: 58.0 → 58,
 * .5 → 0.5, 007 → 7, 1E3 → 1000, 0.10000000000000000555 → 0.1. Strings, sheet names, names, references
 * (A1, 1:3) and structured references stay as they are. A literal beyond the doubles (1E400) is left alone.
 *
 * Why: the engine takes a literal that does not print back identically for text, and sums lose it without a word.
 */
export function normaliseLiterals(formula: string): string {
  return tokenize(formula)
    .map((token) => (token.kind === "number" ? shortest(token.text) : token.text))
    .join("");
}

/** The shortest text of a numeric literal's double. */
export function shortest(literal: string): string {
  const value = Number(literal);
  return Number.isFinite(value) ? String(value) : literal;
}
