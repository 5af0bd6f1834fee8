import type { Ph } from '../units/si.ts';

/**
 * Mean of several pH readings of one soil. pH is averaged as it is, never as [H+]: soil is buffered, and a composite of
 * cores reads the arithmetic mean of their pH (CON26). Cores of 5 and 7 make 6.0, not 5.3.
 *
 * @param values at least one pH
 * @throws RangeError when there is none
 */
export function averagePh(values: readonly Ph[]): Ph {
  if (values.length === 0) throw new RangeError('an average needs at least one pH');
  let sum = 0;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    sum += value;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  // Rounding of the sum must not carry the mean past its own readings.
  return Math.min(high, Math.max(low, sum / values.length));
}
