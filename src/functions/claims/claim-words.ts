/** What reports call our choices; a word that may mean two of them is none. */

const WORDS: Readonly<Record<string, readonly (readonly [choice: string, words: RegExp])[]>> = {
  reference: [
    ["ambient", /\b(?:ambient|air|o\/?a)\b/i],
    ["baseline", /\b(?:baseline|previous|earlier|history|historical|trend)\b/i],
    ["similar", /\b(?:similar|like|phases?|poles?|adjacent|neighbou?r(?:ing)?|components?|sister)\b/i],
  ],
  view: [
    ["indirect", /\b(?:indirect|not direct|covered|insulated|behind)\b/i],
    ["enclosed", /\benclosed\b/i],
    ["direct", /\b(?:direct|line of sight|los|visible|open)\b/i],
  ],
  access: [
    ["outdoor", /\b(?:outdoors?|outside|yard|open air)\b/i],
    ["window", /\b(?:window|viewport|port)\b/i],
    ["open cover", /\b(?:open cover|cover (?:off|open|removed)|door open|opened)\b/i],
    ["free", /\b(?:free|indoors?|inside|no cover)\b/i],
  ],
  reading_is: [
    ["at least", /\b(?:at least|saturated|over ?range|above range)\b|^[>≥]/i],
    ["at most", /\b(?:at most|under ?range|below range)\b|^[<≤]/i],
    ["exact", /\bexact\b/i],
  ],
};

/** The choice of a column that a word stands for, or undefined: then the word is read, or told, as it is. */
export function choiceMeant(column: string, text: string): string | undefined {
  const known = WORDS[column];
  if (known === undefined) return undefined;
  const meant = known.filter(([, words]) => words.test(text)).map(([choice]) => choice);
  // "not direct" holds "direct" too: what says more stands first.
  if (column === "view" && meant[0] === "indirect") return "indirect";
  return meant.length === 1 ? meant[0] : undefined;
}
