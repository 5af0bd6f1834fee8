import type { Message } from '../derivation/message.ts';
import type { Place } from '../plan/place.ts';
import { addDays, addMonths, laterOf } from '../units/calendar.ts';
import type { IsoDate } from '../units/si.ts';

/** No test within three months of lime, fertilizer or organic matter (RHS_2018). */
const MONTHS_AFTER = 3;
/** Days to either side of the day of the last test that count as the same season (SORREL). */
const SAME_SEASON = 15;

export interface SamplingTime {
  readonly from: IsoDate;
  /** Undefined when any later day is as good. */
  readonly to?: IsoDate;
  readonly why: readonly Message[];
}

/**
 * When to take the next sample, so that it can be compared with the last: within 15 days of its time of year, not
 * within three months of an application, not before the plan's retest.
 *
 * @param today ISO date
 * @param retest the plan's retest, when it asks for one
 * @source RHS_2018 (three months), VCE98 (season); 15 days SORREL
 */
export function whenToSample(
  { tests, applications }: Pick<Place, 'tests' | 'applications'>,
  today: IsoDate,
  retest?: { readonly earliest: IsoDate },
): SamplingTime {
  const why: Message[] = [];
  let from = today;
  const spread = latest(applications.map(({ date }) => date));
  if (spread !== undefined) {
    const until = addMonths(spread, MONTHS_AFTER);
    if (until > today) {
      from = laterOf(from, until);
      why.push({ code: 'sampling.when-after-application', parameters: { date: spread, until } });
    }
  }
  if (retest !== undefined && retest.earliest > today) {
    from = laterOf(from, retest.earliest);
    why.push({ code: 'sampling.when-plan', parameters: { date: retest.earliest } });
  }
  const last = latest(tests.filter((test) => test.ph !== undefined).map(({ date }) => date));
  if (last === undefined) return { from, why: [...why, { code: 'sampling.when-first' }] };
  // What is closer than half a year to the last test still belongs to that test's own season.
  let middle = last;
  for (let guard = 0; guard < 40; guard++) {
    middle = addMonths(last, 12 * (guard + 1));
    if (addDays(middle, SAME_SEASON) >= from) break;
  }
  return {
    from: laterOf(from, addDays(middle, -SAME_SEASON)),
    to: addDays(middle, SAME_SEASON),
    why: [...why, { code: 'sampling.when-same-season', parameters: { date: last } }],
  };
}

const latest = (dates: readonly IsoDate[]): IsoDate | undefined =>
  dates.reduce<IsoDate | undefined>((best, date) => (best === undefined || date > best ? date : best), undefined);
