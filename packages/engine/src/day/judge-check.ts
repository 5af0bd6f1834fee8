import { type QualityCheck, qualityLimit } from '@sorrel/almanac/quality-limits';
import type { Ph } from '../units/si.ts';

export interface Judged {
  /** What the meter showed less what it should have shown, pH units. */
  readonly off: number;
  readonly limit: number;
  readonly passed: boolean;
}

/** A meter shows hundredths; a difference on the limit itself must not fail by a rounding of the computer. */
const HAIR = 1e-9;

/**
 * Whether a check passes: within 0.1 of the buffer, within 0.2 of the reference soil or of the first reading of a duplicate.
 *
 * @param expected pH of the buffer at its temperature, of the reference soil, or the first reading
 * @param shown what the meter showed, or the second reading
 * @source almanac `quality-limits` (GENERAL, from memory)
 */
export function judgeCheck(check: QualityCheck, expected: Ph, shown: Ph): Judged {
  const off = shown - expected;
  const { limit } = qualityLimit(check);
  return { off, limit, passed: Math.abs(off) <= limit + HAIR };
}
