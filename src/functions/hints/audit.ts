import type { Hints } from "./words.js";

/** Of the audit of stated numbers. */
export const AUDIT_HINTS: Hints = {
  "two-or-three-temps": (w) =>
    `${w.number("temps")} temperatures: give two, the hot one and its reference, or the three phases.`,
  "loads-of-temps": (w) =>
    `${w.number("loads")} loads for ${w.number("temps")} temperatures: give one for each, and after them the reference load where there is one.`,
};
