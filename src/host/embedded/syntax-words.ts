/** What is wrong with a character that no formula has. */
export function strange(character: string): string {
  if ("“”„«»‘’‚".includes(character)) return `Text stands in straight quotation marks ("), not in ${character}`;
  return `The character ${character} does not belong in a formula`;
}

/** What is wrong with a string, sheet name or bracket that has no end. */
export function neverEnds(text: string): string {
  if (text.startsWith('"')) return "The text that begins here has no closing quotation mark";
  if (text.startsWith("'")) return "The sheet's name that begins here has no closing apostrophe and exclamation mark";
  return "The square bracket opened here is never closed";
}
