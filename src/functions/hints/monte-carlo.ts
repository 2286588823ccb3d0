import type { Hints } from "./words.js";

/** Of draws, of the uncertainty of a rise and of the chance of a grade. */
export const MONTE_CARLO_HINTS: Hints = {
  "whole-number": () => "A whole number is wanted.",
  "draws-too-few": (w) => `Too few to tell where so wide an interval ends: take ${w.number("needed")} or more.`,
  "draws-rejected": (w) =>
    `${w.percent("rejected")} of the draws have no answer: an emissivity or a transmission beyond 1, or no object that gives the reading. The uncertainties are too wide for these inputs; give rectangular ones that stay within what can be.`,
  "reference-air": () =>
    'With "air by thermometer" the reference is one column, the temperature of the air that the rise is over.',
  "reference-reading": () =>
    'The reference is a reading of its own, with emissivity and reflected as the hot one; one column goes with "air by thermometer".',
  "correlations-in-one-image": () =>
    "Inputs that go together are not reckoned with where two readings of one image share them: leave correlations out.",
  "other-surface": (w) =>
    `The two rows differ in ${w.number("setting")}: one surface has one. Take "same image, other surface", or mend the row.`,
  "percent-meant": (w) => `Per cent are meant, 2 for ±2 %: ${w.number("meant")} looks like a fraction.`,
  "camera-exact": () => "One of absolute and percent must be above 0: no camera is exact.",
};
