import { seasonShift } from '@sorrel/almanac/season-shift';
import { monthOf } from '../units/calendar.ts';
import type { IsoDate, Ph } from '../units/si.ts';
import type { PhMethod } from './soil-test.ts';

const shift = (name: string) => {
  const row = seasonShift.find((one) => one.case === name);
  if (row === undefined) throw new RangeError(`no season ${name}`);
  return row;
};
const normal = shift('autumn');
const drought = shift('autumn after drought');

/**
 * What a bed tested in autumn would read in spring, in water: 0.1 to 0.3 higher, about 0.5 after a drought (VCE98).
 * The dip is salt and passes by itself: it is said, never added to a test, and never limed away.
 */
export function springRange(autumn: Ph, afterDrought = false): { readonly low: Ph; readonly high: Ph } {
  const row = afterDrought ? drought : normal;
  return { low: autumn + row.low, high: autumn + row.high };
}

export type Season = 'spring' | 'summer' | 'autumn' | 'winter';

const NORTH: readonly Season[] = ['winter', 'spring', 'summer', 'autumn'];

/** Season of a date by calendar months: March to May is spring in the north. */
export function seasonOf(date: IsoDate, hemisphere: 'north' | 'south' = 'north'): Season {
  const quarter = Math.floor((monthOf(date) % 12) / 3);
  return NORTH[(quarter + (hemisphere === 'south' ? 2 : 0)) % 4] ?? 'winter';
}

/** Whether a pH read this way swings with the season: water does, salt solutions far less (SCMA_4B1). */
export const swingsWithSeason = (method: PhMethod): boolean => method.startsWith('water') || method === 'unstated';
