/**
 * Returns the known word nearest to a misspelt one, with up to a third of its letters different; undefined if none is
 * near.
 *
 * @example nearest('regstration', ['registration', 'regime'])  // 'registration'
 */
export function nearest(word: string, known: readonly string[]): string | undefined {
  const scored = known.map((candidate) => ({
    candidate,
    distance: editDistance(word.toLowerCase(), candidate.toLowerCase()),
  }));
  const best = scored.sort((a, b) => a.distance - b.distance)[0];
  return best && best.distance <= Math.max(1, Math.floor(word.length / 3)) ? best.candidate : undefined;
}

/** Returns the Levenshtein distance, one row at a time; long words are not compared. */
function editDistance(from: string, to: string): number {
  if (from.length > 60) return from.length;
  let row = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let i = 1; i <= from.length; i++) {
    const next = [i];
    for (let j = 1; j <= to.length; j++) {
      const swap = (row[j - 1] ?? 0) + (from[i - 1] === to[j - 1] ? 0 : 1);
      next.push(Math.min(swap, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[to.length] ?? to.length;
}
