/** Names of the functions of ours that prepared formulas hold; functions.ts says what each does. */

export const AS_NUMBER = "RECALC.NUMBER";
export const AS_TEXT = "RECALC.TEXT";
export const AS_TRUTH = "RECALC.TRUTH";
export const AS_SHOWN = "RECALC.SHOWN";
export const NOT = "RECALC.NOT";
export const SOUGHT = "RECALC.SOUGHT";
export const ONLY_NUMBER = "RECALC.ONLY.NUMBER";
export const NO_PATTERN = "RECALC.NO.PATTERN";
export const AS_DAY = "RECALC.DAY";
export const COPY = "RECALC.COPY";
export const NUMBERS = "RECALC.NUMBERS";
export const FORMATTED = "RECALC.FORMATTED";
export const DOUBT = "RECALC.DOUBT";

/** Before COUNTIF and COUNTIFS where they read a whole column or row: what they would count beyond the used cells is doubted. */
export const WHOLE = "RECALC.WHOLE.";
