import type { Recorder } from '../derivation/derivation.ts';
import type { Message } from '../derivation/message.ts';
import { mayDose } from '../evidence/test-error.ts';
import type { Product } from '../materials/material.ts';
import { addDays, addMonths, laterOf } from '../units/calendar.ts';
import type { IsoDate } from '../units/si.ts';
import { capFor } from './cap.ts';
import type { Place, Settings } from './place.ts';
import type { Application } from './recommendation.ts';
import { capThenRest } from './split.ts';
import { afterWarmMonths, type Work, windowFor } from './when.ts';

/** How many later dressings are listed; beyond that the retest decides anyway. */
const MOST_LISTED = 4;
/** Days for a laboratory to answer (common practice, no source). */
const TO_HEAR_BACK = 21;

export interface Job {
  readonly direction: 'raise' | 'lower';
  /** Size of the first dressing that is safe and wanted, kg CaCO3 acting per m² (per m³ in pots), before the published cap. */
  readonly first: number;
  /** Size of the whole need, same unit. */
  readonly need: number;
  readonly place: Place;
  readonly settings: Settings;
  /** Fit products, best first. */
  readonly ranked: readonly Product[];
  readonly how: readonly Message[];
}

export interface Dressings {
  readonly applications: readonly Application[];
  readonly retest: { readonly earliest: IsoDate; readonly latest: IsoDate };
  /** Day of what was spread since the last test that may set a dose; then even the first step waits for a retest. */
  readonly spread: IsoDate | undefined;
  /** Dressings the whole need would take at the published maximum. */
  readonly count: number;
  /** True when the published maximum, not the risk or the need, set the first dressing. */
  readonly capped: boolean;
}

/** kg CaCO3 acting per kg of product as sold, always positive. */
export const actingPerKg = (product: Product): number => Math.abs(product.currency) * product.efficiency;

/**
 * Splits a need into dated dressings: none above the published maximum, each later one only after a retest.
 *
 * @param job sizes are positive; `first` <= `need`
 * @source limits: almanac `safe-limits`; waits: `safe-limits` and `calendar-rules`
 */
export function dressingsOf(job: Job, recorder?: Recorder): Dressings {
  const { place, settings, direction, ranked, need } = job;
  const best = ranked[0] as Product;
  const cap = capFor(best, place.situation, recorder);
  const capped = job.first > cap.currency;
  const first = Math.min(job.first, cap.currency);
  const work = workOf(direction, best, place);
  const pot = place.kind === 'container';
  // A pot can be repotted on any day; the ground must be thawed, or warm enough for sulfur.
  const windowFrom = (date: IsoDate) =>
    pot ? { earliest: date, latest: addDays(date, 28) } : windowFor(work, date, settings);
  const retestFrom = (date: IsoDate) =>
    pot
      ? { earliest: addDays(date, 28), latest: addDays(date, 42) }
      : retestAfter(direction, date, cap.months, settings);
  const spread = spreadSinceTest(place);
  // A retest stands between steps, so what was spread since the last test is the step before this one.
  const after = spread === undefined ? undefined : retestFrom(spread);
  let window = windowFrom(
    after === undefined ? settings.today : addDays(laterOf(after.earliest, settings.today), TO_HEAR_BACK),
  );
  const applications: Application[] = share(first, ranked, 1, window, job, after !== undefined);
  const retest =
    after === undefined
      ? retestFrom(window.earliest)
      : {
          earliest: laterOf(after.earliest, settings.today),
          latest: laterOf(after.latest, addMonths(settings.today, 1)),
        };
  const rests = capThenRest(need - first, cap.currency);
  let earliest = addDays(retestFrom(window.earliest).earliest, TO_HEAR_BACK);
  for (let i = 0; i < Math.min(rests.length, MOST_LISTED); i++) {
    window = windowFrom(earliest);
    applications.push(...share(rests[i] as number, ranked.slice(0, 1), i + 2, window, job, true));
    earliest = addDays(retestFrom(window.earliest).earliest, TO_HEAR_BACK);
  }
  return { applications, retest, spread, count: Math.ceil(need / cap.currency - 1e-9), capped };
}

/** Day of the last application that no dosing test has seen yet. */
function spreadSinceTest({ tests, applications }: Place): IsoDate | undefined {
  if (applications.length === 0) return undefined;
  let tested = '';
  for (const test of tests)
    if (test.ph !== undefined && mayDose(test.instrument) && test.date > tested) tested = test.date;
  let spread = '';
  for (const { date } of applications) if (date >= tested && date > spread) spread = date;
  return spread === '' ? undefined : spread;
}

function workOf(direction: 'raise' | 'lower', product: Product, place: Place): Work {
  if (direction === 'raise') return product.form === 'ash' ? 'ash' : 'lime';
  if (Math.abs(product.currency) < 2) return 'sulfate';
  return place.situation === 'lawn' ? 'lawn sulfur' : 'sulfur';
}

/** Retest windows: lime 6 to 12 months, sulfur 3 to 4 months of warm soil (practice calendar; 3 months at least, GNLIME). */
function retestAfter(direction: 'raise' | 'lower', from: IsoDate, months: number, settings: Settings) {
  if (direction === 'raise') return { earliest: addMonths(from, Math.max(6, months)), latest: addMonths(from, 12) };
  const earliest = afterWarmMonths(from, Math.max(3, months), settings);
  return { earliest, latest: addMonths(earliest, 2) };
}

/** One dressing, from the stock of the best product first and then the next ones. */
function share(
  dose: number,
  products: readonly Product[],
  number: number,
  window: { earliest: IsoDate; latest: IsoDate },
  job: Job,
  onlyIfRetest: boolean,
): Application[] {
  const { place } = job;
  const pot = place.kind === 'container';
  const extent = pot ? (place.volume ?? 0) : place.area;
  const sign = job.direction === 'raise' ? 1 : -1;
  const parts: Application[] = [];
  let rest = dose;
  for (let i = 0; i < products.length && rest > 1e-9; i++) {
    const product = products[i] as Product;
    const last = i === products.length - 1 || product.onHand === undefined || product.bag !== undefined;
    const stock = last ? Number.POSITIVE_INFINITY : (product.onHand ?? 0);
    const perExtent = Math.min(
      rest / actingPerKg(product),
      stock / extent,
      i === 0 ? Infinity : capFor(product, place.situation).mass,
    );
    if (perExtent <= 0) continue;
    const currency = perExtent * actingPerKg(product);
    rest -= currency;
    parts.push({
      number,
      product,
      mass: perExtent * extent,
      ...(pot ? { perVolume: perExtent } : { perArea: perExtent }),
      currency: sign * currency,
      earliest: window.earliest,
      latest: window.latest,
      onlyIfRetest,
      how: job.how,
    });
  }
  return parts;
}
