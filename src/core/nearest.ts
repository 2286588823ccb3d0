/** The candidates that differ least from a mistyped word, best first; none that would be guessing. Compared without case. */
export function nearest(word: string, candidates: readonly string[], most = 3): string[] {
  const wanted = word.toUpperCase();
  const allowed = Math.floor(wanted.length / 3);
  return candidates
    .map((candidate) => ({ candidate, distance: edits(wanted, candidate.toUpperCase()) }))
    .filter(({ distance }) => distance <= allowed)
    .sort((a, b) => a.distance - b.distance)
    .slice(0, most)
    .map(({ candidate }) => candidate);
}

/** Fewest single letters to insert, delete or replace. */
function edits(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      next.push(Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + same));
    }
    row = next;
  }
  return row[b.length]!;
}

const wordsOf = (name: string): string[] =>
  name
    .toUpperCase()
    .split(/[^\p{L}\p{N}.]+/u)
    .filter(Boolean);

/**
 * Names of several words that are near to what was asked for, best first: those that have every word asked for, give or
 * take a slip of the pen; where there are none, those that have one of them.
 */
export function nearestByWord(asked: string, names: readonly string[], most = 6): string[] {
  const wanted = wordsOf(asked);
  const scored = names.map((name) => {
    const own = wordsOf(name);
    const slips = wanted.map((word) => Math.min(...own.map((one) => slipsBetween(word, one))));
    const met = slips.filter(Number.isFinite);
    return { name, met: met.length, slips: met.reduce((sum, one) => sum + one, 0) };
  });
  const best = scored.filter(({ met }) => met === wanted.length && met > 0);
  return (best.length > 0 ? best : scored.filter(({ met }) => met > 0))
    .sort((a, b) => b.met - a.met || a.slips - b.slips)
    .slice(0, most)
    .map(({ name }) => name);
}

/** 0 where one begins as the other, else the edits between them; infinite where that would be guessing. */
function slipsBetween(asked: string, own: string): number {
  if (own.startsWith(asked) || (own.length > 3 && asked.startsWith(own))) return 0;
  const distance = edits(asked, own);
  return distance <= Math.floor(asked.length / 3) ? distance : Infinity;
}
