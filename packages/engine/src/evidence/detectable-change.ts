import { testError } from '@sorrel/almanac/test-errors';
import type { SoilTest } from './soil-test.ts';

const WITHIN = testError('laboratory-within-run').sd;
/** One good composite of 12 cores, sampling and laboratory together (FV55; between laboratories TEXT, from memory). */
const COMPOSITE = 0.15;

/** Change that two tests of sd `a` and `b` can tell from chance: `z·sqrt(a² + b²)`; z 1.96 is 95 %, 1.28 is 80 %. */
export const changeBeyondError = (a: number, b: number, z = 1.96): number => z * Math.sqrt(a * a + b * b);

/** Same laboratory, method and season: 2·√2·0.1 = 0.28 (FERRARI_VERMEULEN). */
export const DETECTABLE_SAME_LAB = changeBeyondError(WITHIN, WITHIN, 2);
/** Otherwise: 1.96·√2·0.15 = 0.42. */
export const DETECTABLE = changeBeyondError(COMPOSITE, COMPOSITE);

const composite = (test: SoilTest): boolean => test.instrument === 'laboratory' && (test.cores ?? 12) >= 8;

/**
 * Smallest difference between two tests that means the soil has changed: 0.28 for two composites of the same laboratory
 * and method, 0.42 for others, and more for home readings.
 *
 * @param sdBefore error of the first test
 * @param sdAfter error of the second
 */
export function detectableChange(before: SoilTest, after: SoilTest, sdBefore: number, sdAfter: number): number {
  if (composite(before) && composite(after)) {
    const same =
      before.laboratory !== undefined &&
      before.laboratory === after.laboratory &&
      before.ph?.method === after.ph?.method &&
      before.ph?.method !== 'unstated';
    return same ? DETECTABLE_SAME_LAB : DETECTABLE;
  }
  return Math.max(DETECTABLE, changeBeyondError(sdBefore, sdAfter));
}
