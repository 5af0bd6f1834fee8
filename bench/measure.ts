/** Times of two things measured in turns, so that a busy moment of the machine falls on both. */
export interface Pair {
  readonly ours: number;
  readonly theirs: number;
  readonly ratio: number;
}

/** Middle value; the mean of the two middle ones for an even count. Throws RangeError for none. */
export function median(values: readonly number[]): number {
  if (values.length === 0) throw new RangeError('no values');
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  const upper = sorted[half] as number;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] as number) + upper) / 2;
}

/** The value that a share of all values do not pass (nearest rank). Throws RangeError for none. */
export function share(values: readonly number[], of: number): number {
  if (values.length === 0) throw new RangeError('no values');
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(of * sorted.length) - 1)] as number;
}

/** Milliseconds that one call takes. */
export async function timed(task: () => unknown): Promise<number> {
  const start = performance.now();
  await task();
  return performance.now() - start;
}

/**
 * Runs both tasks in turns, once to warm up and then `rounds` times.
 *
 * @returns medians in milliseconds, and the median of the ratios round by round
 */
export async function inTurns(ours: () => unknown, theirs: () => unknown, rounds: number): Promise<Pair> {
  const a: number[] = [];
  const b: number[] = [];
  for (let round = 0; round <= rounds; round++) {
    const [first, second] = round % 2 === 0 ? [ours, theirs] : [theirs, ours];
    const [one, two] = [await timed(first), await timed(second)];
    if (round === 0) continue;
    a.push(round % 2 === 0 ? one : two);
    b.push(round % 2 === 0 ? two : one);
  }
  return { ours: median(a), theirs: median(b), ratio: median(a.map((time, at) => time / (b[at] as number))) };
}
