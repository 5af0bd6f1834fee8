/** Number of single-letter changes that turn one word into the other. */
function distance(a: string, b: string): number {
  let previous = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1] ? 0 : 1;
      current.push(
        Math.min((previous[column] ?? 0) + 1, (current[column - 1] ?? 0) + 1, (previous[column - 1] ?? 0) + same),
      );
    }
    previous = current;
  }
  return previous[b.length] ?? 0;
}

/** The known word closest to what was written, the first of equals; undefined when none shares half its letters. */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  let best: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of known) {
    const changes = distance(word, candidate);
    if (changes < least && changes <= Math.max(word.length, candidate.length) / 2) {
      best = candidate;
      least = changes;
    }
  }
  return best;
}
