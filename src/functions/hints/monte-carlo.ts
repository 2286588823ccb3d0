import type { Hints } from "./words.js";

/** Of draws, of the uncertainty of a rise and of the chance of a grade. */
export const MONTE_CARLO_HINTS: Hints = {
  "whole-number": () => "A whole number is wanted.",
};
