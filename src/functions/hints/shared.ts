import type { Hints } from "./words.js";

/** Of any argument. */
export const SHARED_HINTS: Hints = {
  "per-cent": (w) => `A fraction is wanted, not per cent: ${w.number("meant")}?`,
  "zero-or-empty": () =>
    'Nothing passes at 0. Excel hands an empty cell over as 0: write IF(ref="","",ref), or leave the argument out.',
  "absolute-zero": () => "Nothing is at or below absolute zero: check value and units.",
  "not-a-number": () => "A number is wanted, with a point for decimals and nothing else in the cell.",
  "other-minus": () => "The sign in front is not a plain minus (-): type the number again.",
  bound: () => "A bound is not a reading: take it again in the camera's next range, or say so apart.",
};
