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
