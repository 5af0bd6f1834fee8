import { phClasses } from '@sorrel/almanac/ph-classes';
import type { Ph } from '../units/si.ts';

/**
 * The soil survey's name for a pH, e.g. `moderately acid`. The classes leave gaps of 0.1, so the pH is first rounded
 * to one decimal, half up.
 *
 * @param ph in water, 0 to 14
 * @throws RangeError outside 0 to 14
 * @source ssm-classes
 */
export function reactionClass(ph: Ph): string {
  if (!(ph >= 0 && ph <= 14)) throw new RangeError(`pH must lie between 0 and 14, got ${ph}`);
  // Tenths as a whole number: 6.05 is held as 6.04999….
  const tenths = Math.round(ph * 10 + 1e-9);
  const found = phClasses.find((row) => row.high === undefined || tenths <= Math.round(row.high * 10));
  return (found as (typeof phClasses)[number]).name;
}
