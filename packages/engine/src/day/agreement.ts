import { qualityLimit } from '@sorrel/almanac/quality-limits';
import type { Ph } from '../units/si.ts';

export interface Agreement {
  readonly pairs: number;
  /** Pairs within the limit. */
  readonly agree: number;
  /** Standard deviation of one reading, from the differences of the pairs, pH units. */
  readonly sd: number;
}

/**
 * How well readings of the same sample agree: `sd = sqrt(Σ d²/(2 n))`.
 *
 * @param pairs first and second reading of each duplicate
 * @returns undefined without a pair
 * @source the standard deviation from duplicates is textbook statistics (common practice, no source); limit: almanac `quality-limits`
 */
export function agreementOf(pairs: readonly (readonly [Ph, Ph])[]): Agreement | undefined {
  if (pairs.length === 0) return undefined;
  const { limit } = qualityLimit('duplicate');
  let squares = 0;
  let agree = 0;
  for (const [first, second] of pairs) {
    const difference = second - first;
    squares += difference * difference;
    if (Math.abs(difference) <= limit + 1e-9) agree++;
  }
  return { pairs: pairs.length, agree, sd: Math.sqrt(squares / (2 * pairs.length)) };
}
