/**
 * The candidate closest to a word, by the fewest letters changed, swapped, added or dropped, regardless of capitals.
 *
 * @param word what the person typed
 * @param candidates words we know
 * @returns the nearest, or `undefined` when nothing lies within a third of the word's length (at least 2 letters)
 */
export function nearest(word: string, candidates: Iterable<string>): string | undefined {
  const typed = plain(word);
  let best: string | undefined;
  let bestDistance = Math.max(2, Math.floor(typed.length / 3)) + 1;
  for (const candidate of candidates) {
    const distance = editDistance(typed, plain(candidate));
    if (distance < bestDistance) {
      bestDistance = distance;
      best = candidate;
    }
  }
  return best;
}

const plain = (word: string): string => word.toLowerCase().replace(/[\s_-]+/g, '');

/** Damerau-Levenshtein distance with adjacent swaps (optimal string alignment), textbook recurrence. */
export function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, (before[j - 2] ?? 0) + 1);
      row.push(cost);
    }
    before = last;
    last = row;
  }
  return last[b.length] ?? 0;
}
