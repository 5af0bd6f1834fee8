import type { Ph } from '../units/si.ts';
import { judgeCheck } from './judge-check.ts';

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
 * @source the standard deviation from duplicates is textbook statistics (common practice, no source); limit: `judgeCheck`
 */
export function agreementOf(pairs: readonly (readonly [Ph, Ph])[]): Agreement | undefined {
  if (pairs.length === 0) return undefined;
  let squares = 0;
  let agree = 0;
  for (const [first, second] of pairs) {
    const { off, passed } = judgeCheck('duplicate', first, second);
    squares += off * off;
    if (passed) agree++;
  }
  return { pairs: pairs.length, agree, sd: Math.sqrt(squares / (2 * pairs.length)) };
}
