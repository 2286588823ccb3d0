import type { Hints } from "./words.js";

/** Of draws, of the uncertainty of a rise and of the chance of a grade. */
export const MONTE_CARLO_HINTS: Hints = {
  "whole-number": () => "A whole number is wanted.",
  "draws-too-few": (w) => `Too few to tell where so wide an interval ends: take ${w.number("needed")} or more.`,
  "draws-rejected": (w) =>
    `${w.percent("rejected")} of the draws have no answer: an emissivity or a transmission beyond 1, or no object that gives the reading. The uncertainties are too wide for these inputs; give rectangular ones that stay within what can be.`,
};
