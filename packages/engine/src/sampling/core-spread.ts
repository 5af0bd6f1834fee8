import type { SoilTest } from '../evidence/soil-test.ts';
import { CORE_SD, CORE_SD_IN_GROUND, CORE_SD_MIXED_BED, coresOf, instrumentSd } from '../evidence/test-error.ts';
import type { Place } from '../plan/place.ts';
import { daysBetween } from '../units/calendar.ts';

/** Two tests this near in time should have read the same soil (SORREL). */
const SAME_TIME = 45;
/** How many pairs of tests the usual figure counts for (SORREL). */
const USUAL_WEIGHT = 4;
const LEAST = 0.1;
const MOST = 1;

export interface CoreSpread {
  /** Spread between single cores, pH units. */
  readonly sd: number;
  /** Pairs of tests it was seen in; 0 when it is the usual figure alone. */
  readonly pairs: number;
}

/** Usual spread of such ground (test-errors `core-mixed-bed`, `core-in-ground`, `core`; TEXT, from memory). */
export const usualSpread = (place: Pick<Place, 'kind' | 'situation'>): number =>
  place.kind === 'plot' || place.situation === 'lawn'
    ? CORE_SD_IN_GROUND
    : place.kind === 'bed' && place.situation === 'open ground'
      ? CORE_SD_MIXED_BED
      : CORE_SD;

/**
 * Spread between single cores, from tests of one place that should have agreed: taken within 45 days of each other by
 * the same means and method, with nothing spread between. `s_core² = mean of ((d² − 2 s_lab²)/(1/n1 + 1/n2))` over the
 * pairs, each not below 0, weighed against the usual figure, which counts as four pairs.
 *
 * @param places whose tests count together
 * @returns 0.1 to 1 pH
 * @source SORREL; usual figures from memory
 */
export function coreSpread(places: readonly Place[]): CoreSpread {
  const usual = mean(places.map(usualSpread)) ?? CORE_SD;
  const seen = places.flatMap(variances);
  const pooled =
    (USUAL_WEIGHT * usual * usual + seen.reduce((sum, each) => sum + each, 0)) / (USUAL_WEIGHT + seen.length);
  return { sd: Math.min(MOST, Math.max(LEAST, Math.sqrt(pooled))), pairs: seen.length };
}

function variances({ tests, applications }: Place): number[] {
  const found: number[] = [];
  const ordered = [...tests].sort((a, b) => a.date.localeCompare(b.date));
  for (let index = 1; index < ordered.length; index++) {
    const before = ordered[index - 1];
    const after = ordered[index];
    if (before === undefined || after === undefined || !agree(before, after)) continue;
    if (applications.some(({ date }) => date >= before.date && date <= after.date)) continue;
    const apart = (after.ph?.value ?? 0) - (before.ph?.value ?? 0);
    const lab = instrumentSd(after.instrument);
    const share = 1 / coresOf(before) + 1 / coresOf(after);
    found.push(Math.max(0, apart * apart - 2 * lab * lab) / share);
  }
  return found;
}

const agree = (a: SoilTest, b: SoilTest): boolean =>
  a.ph !== undefined &&
  a.ph.method === b.ph?.method &&
  a.instrument === b.instrument &&
  daysBetween(a.date, b.date) <= SAME_TIME;

const mean = (values: readonly number[]): number | undefined =>
  values.length === 0 ? undefined : values.reduce((sum, value) => sum + value, 0) / values.length;
