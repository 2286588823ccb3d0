/** What the build decides (src/scripts/excel-settings.cjs). */
declare const GREYBODY_BLANK_ERRORS: boolean;

/** An empty text for each error, with its message kept for the pane. */
export const blankErrors: boolean = GREYBODY_BLANK_ERRORS;
