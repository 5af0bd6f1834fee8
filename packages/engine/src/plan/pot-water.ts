import { waterAlkalinity } from '@sorrel/almanac/water-alkalinity';
import type { Message } from '../derivation/message.ts';
import { CACO3_PER_CHARGE } from '../materials/caco3.ts';
import type { Place, Water } from './place.ts';

const band = (kind: string, subject: string): number => {
  const row = waterAlkalinity.find((candidate) => candidate.kind === kind && candidate.subject === subject);
  if (row?.high === undefined) throw new RangeError(`no ${kind} row for ${subject} in water-alkalinity`);
  return row.high;
};
/** meq/L, which is mol/m³: above this the water is dealt with first, whatever the pot (ALK_SLIDES, ALK_RANGE). */
const ACT_ABOVE = band('act', 'any pot');
/** meq/L from which pots of 4 to 5 inches are warned (NCSU_ALK, memory). */
const WARN_ABOVE = band('warn', '4-5 inch pots');

/** True when powder in a pot would lose against its water. */
export const waterComesFirst = (water: Water | undefined): boolean =>
  water !== undefined && water.alkalinity >= ACT_ABOVE;

/** What to say of the water of pots: hard, or not known. */
export function waterCautions(place: Place): readonly Message[] {
  return place.water !== undefined && place.water.alkalinity >= WARN_ABOVE ? [hardWater(place.water)] : [];
}

/** Why the water comes before any powder: what it adds in a year, when the amount given is known. */
export function waterReason(place: Place, water: Water): Message {
  if (water.perYear === undefined || place.depth <= 0) return hardWater(water);
  const load = (water.alkalinity * water.perYear * CACO3_PER_CHARGE) / place.depth;
  return { code: 'plan.pot-water', parameters: { load: { value: load, dimension: 'massPerVolume' } } };
}

const hardWater = (water: Water): Message => ({
  code: 'plan.caution-pot-water',
  parameters: { alkalinity: { value: water.alkalinity, dimension: 'alkalinity' } },
});
