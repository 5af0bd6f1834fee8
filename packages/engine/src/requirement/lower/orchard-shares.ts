import type { Fraction, Ph } from '../../units/si.ts';

/**
 * Yearly shares of the sulfur an established orchard needs: halves from pH 7.5 to 8, thirds above; whole below.
 * Worked in no deeper than 2 in; retest at 6 and 12 months and wait two years before topping up.
 *
 * @param ph present pH in water
 * @returns one share a year, summing to 1
 * @source ORCH-BOOK
 */
export function orchardShares(ph: Ph): readonly Fraction[] {
  if (ph > 8) return [1 / 3, 1 / 3, 1 / 3];
  return ph >= 7.5 ? [1 / 2, 1 / 2] : [1];
}
