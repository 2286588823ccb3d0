import type { Hints } from "./words.js";

/** Of uncertainties and of how they go together. */
export const UNCERTAINTY_HINTS: Hints = {
  "correlation-name": (w) =>
    `Row ${w.number("row")} of the correlations: name | name | r, two of the inputs such as reflected and air_temp.`,
  "correlation-self": (w) => `Row ${w.number("row")} of the correlations: two different inputs are wanted.`,
  "correlation-range": (w) => `Row ${w.number("row")} of the correlations: r is a number from -1 to 1.`,
  "correlation-twice": (w) => `Row ${w.number("row")} of the correlations: this pair stands above already.`,
  "correlation-contradiction": () =>
    "These correlations contradict each other: where two inputs go with a third, they go with each other too.",
  "temperature-of-uncertain": (w) =>
    `It is needed where ${w.number("input")} is uncertain: leave that uncertainty empty or give the temperature.`,
  "uncertainties-exchanged": () => "So uncertain it tells nothing. Are inputs and uncertainties exchanged?",
  "all-exact": () => "All are 0 or empty, and what has none is taken as exact: one above 0 is needed.",
};
