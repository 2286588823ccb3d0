/** The command was called in a way that it does not know: told in one line, exit status 2. */
export class UsageError extends Error {}
