/** As many as the engine works out within a second or so; a table grows past it by itself. */
export const mostRows = 2000;

/** The rows that were typed, or undefined where that is no number of rows. */
export function rowsOf(typed: string, most = mostRows): number | undefined {
  const rows = /^\s*\d{1,4}\s*$/.test(typed) ? Number(typed) : 0;
  return rows >= 1 && rows <= most ? rows : undefined;
}
