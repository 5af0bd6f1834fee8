import type { Message } from '../derivation/message.ts';
import type { Product } from '../materials/material.ts';
import type { UseContext } from '../materials/refuse.ts';
import { capFor } from '../plan/cap.ts';
import { chooseProducts } from '../plan/choose.ts';
import { EXTREME_LOW, LEAD_BLOCKS_ACID, MOST_DRESSINGS } from '../plan/decide.ts';
import { actingPerKg } from '../plan/dressings.ts';
import { type Evidence, gather } from '../plan/evidence.ts';
import type { Place, Settings } from '../plan/place.ts';
import { waterComesFirst } from '../plan/pot-water.ts';
import type { Target } from '../plan/recommendation.ts';
import { requirementOf } from '../plan/size.ts';
import type { Kilogram, Ph } from '../units/si.ts';
import type { Range } from './ranges.ts';

/** What it takes to bring one place to one pH. */
export interface Move {
  readonly ph: Ph;
  /** Pure CaCO3 equivalent moved in the whole place, kg, never negative; 0 for leaving it alone. */
  readonly currency: number;
  readonly direction: 'none' | 'raise' | 'lower';
  readonly product?: Product;
  /** Product as sold for the whole place. */
  readonly material: Kilogram;
  /** Dressings at the published maximum. */
  readonly dressings: number;
  /** Months until the last dressing has worked. */
  readonly months: number;
  /** pH the buffer curve was asked for. */
  readonly curveAt?: Ph;
}

/** The pH values a place can be brought to, from sour to limy, and what closes the ways that are not open. */
export interface Moves {
  readonly present: Ph | undefined;
  /** Error of that pH. */
  readonly sd?: number;
  readonly open: readonly Move[];
  /** Why nothing sourer, or nothing sweeter, can be had. */
  readonly noLower?: Message;
  readonly noRaise?: Message;
}

/** Months a dressing of lime, and of sulfur, needs before the retest (practice calendar, as in `dressingsOf`). */
const WORKS = { raise: 6, lower: 3 } as const;

/** Target that asks for a curve in one direction. */
export const towards = (ph: Ph): Target => ({ low: ph, high: ph, aim: ph, conflicts: [], basis: 'plants' });

/**
 * What each pH would cost in one place: nothing for the present pH, and for every other what the buffer curve asks
 * between here and there. Free lime, lead, sodium, hard water on pots, an unsafe reading, materials that are refused and
 * needs of more than six dressings close a way, and the reason is kept. A pot without a test is filled afresh, at any pH.
 *
 * Only the ends nearest to the present pH are looked at: going further into a range suits no plant more and costs more.
 *
 * @param wanted ranges that plants or the gardener ask for, on the scale of the place, any order, may repeat
 * @source `requirementOf`; limits as in `decide` and `dressingsOf`
 */
export function movesOf(
  place: Place,
  wanted: readonly Range[],
  products: readonly Product[],
  settings: Settings,
): Moves {
  const lows = distinct(wanted.map(({ low }) => low));
  const highs = distinct(wanted.map(({ high }) => high));
  const first = gather(place, towards(lows[lows.length >> 1] ?? 6.5), settings, undefined, true);
  const { present } = first;
  if (present === undefined) {
    if (place.kind !== 'container') return { present: undefined, open: [], ...both({ code: 'placing.no-test' }) };
    return { present: undefined, open: lows.map(still) };
  }
  const here = present.mean;
  const open: Move[] = [still(here)];
  const closed: { noRaise?: Message; noLower?: Message } = {};
  const up = lows.filter((ph) => ph > here);
  const down = highs.filter((ph) => ph < here).reverse();
  for (const [direction, values] of [
    ['raise', up],
    ['lower', down],
  ] as const) {
    if (values.length === 0) continue;
    const why = refusal(place, first, direction);
    // One curve a direction, so that going further never costs less.
    const middle = values[values.length >> 1] as Ph;
    const evidence = why === undefined ? gather(place, towards(middle), settings, undefined, true) : first;
    let stop = why;
    for (const ph of values) {
      const found = stop ?? move(place, evidence, middle, ph, direction, products);
      if ('code' in found) {
        stop = found;
        break;
      }
      open.push(found);
    }
    if (stop !== undefined) closed[direction === 'raise' ? 'noRaise' : 'noLower'] = stop;
  }
  return { present: here, sd: present.sd, open: open.sort((a, b) => a.ph - b.ph), ...closed };
}

const distinct = (values: readonly Ph[]): Ph[] => [...new Set(values)].sort((a, b) => a - b);
const still = (ph: Ph): Move => ({ ph, currency: 0, direction: 'none', material: 0, dressings: 0, months: 0 });
const both = (why: Message) => ({ noRaise: why, noLower: why });

/** Why the pH of this place is not moved that way at all. */
function refusal(
  place: Place,
  { present, freeLime, lead }: Evidence,
  direction: 'raise' | 'lower',
): Message | undefined {
  if (present === undefined) return { code: 'placing.no-test' };
  if (!present.mayDose) return { code: 'placing.home-reading' };
  if (present.mean < EXTREME_LOW) return { code: 'placing.extreme' };
  if (direction === 'raise') return undefined;
  if (lead !== undefined && lead >= LEAD_BLOCKS_ACID) return { code: 'placing.lead' };
  if (place.kind === 'container')
    return place.water !== undefined && waterComesFirst(place.water) ? { code: 'placing.hard-water' } : undefined;
  if (freeLime?.sodiumSuspected) return { code: 'placing.sodium' };
  if (freeLime?.class === 'small beds only' || freeLime?.class === 'do not acidify in ground')
    return { code: 'placing.free-lime' };
  return freeLime?.class === 'test first' ? { code: 'placing.fizz-first' } : undefined;
}

function move(
  place: Place,
  { present, reconciled, layer, latest, lead, freeLime }: Evidence,
  curveAt: Ph,
  ph: Ph,
  direction: 'raise' | 'lower',
  products: readonly Product[],
): Move | Message {
  const curve = reconciled?.curve;
  if (curve === undefined || present === undefined) return { code: 'placing.no-rate' };
  const need = Math.abs(requirementOf(curve, layer, present, ph).best);
  const context: UseContext = {
    situation: place.situation,
    presentPh: present.mean,
    targetPh: ph,
    highPh: ph,
    medium: place.medium,
    planted: place.situation !== 'open ground',
    certifiedOrganic: place.certifiedOrganic === true,
    home: true,
    ...(lead === undefined ? {} : { lead }),
    ...(freeLime === undefined || freeLime.carbonate.how === 'not tested'
      ? {}
      : { carbonate: freeLime.carbonate.fraction }),
  };
  const [product] = chooseProducts(direction, products, context, latest).ranked;
  if (product === undefined) return { code: 'placing.no-material' };
  const cap = capFor(product, place.situation);
  if (cap.currency <= 0) return { code: 'placing.no-limit' };
  const dressings = Math.ceil(need / cap.currency - 1e-9);
  if (dressings > MOST_DRESSINGS) return { code: 'placing.too-many-dressings', parameters: { count: dressings } };
  const extent = place.kind === 'container' ? (place.volume ?? 0) : place.area;
  const months = (dressings - 1) * Math.max(WORKS[direction], cap.months) + WORKS[direction];
  const material = (need / actingPerKg(product)) * extent;
  return { ph, currency: need * extent, direction, product, material, dressings, months, curveAt };
}
