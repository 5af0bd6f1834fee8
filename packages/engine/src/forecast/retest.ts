import type { Message } from '../derivation/message.ts';
import { daysBetween } from './dates.ts';

export interface RetestInput {
  readonly dates: readonly string[];
  readonly inside: readonly number[];
  readonly median: readonly number[];
  /** Date of the last application, or undefined when nothing is put on. */
  readonly lastApplication?: string;
  readonly container: boolean;
}

/** Ground limestone and sulfur: not before three months (dynamics 7; UTK). Pots: four weeks (acidification 11). */
const WAIT_DAYS = 91;
const WAIT_DAYS_POT = 28;
/** Chance either way at which a test can still change what to do (judgement). */
const OPEN = 0.2;
/** Change of the median in four weeks below which the material has mostly done its work (judgement). */
const SLOW = 0.02;
/** Every place is tested again after three years at the latest (common practice, no source). */
const LATEST_DAYS = 1096;

/**
 * First date at which a retest would change what to do: enough time since the last application, the pH no longer moving
 * fast, and neither "inside" nor "outside" so certain that the answer is known without a test. Without a range, the
 * first date after the wait. After three years at the latest.
 */
export function retestDate(input: RetestInput): { readonly date: string; readonly why: Message } {
  const { dates, inside, median, lastApplication } = input;
  const start = dates[0] ?? '';
  const wait = input.container ? WAIT_DAYS_POT : WAIT_DAYS;
  const readyFrom = lastApplication === undefined ? 0 : Math.max(0, daysBetween(start, lastApplication)) + wait;
  const perFourWeeks = Math.max(1, Math.round(28 / Math.max(1, daysBetween(start, dates[1] ?? start))));
  for (const [i, date] of dates.entries()) {
    const day = daysBetween(start, date);
    if (day >= LATEST_DAYS) return { date, why: { code: 'forecast.retest-routine' } };
    if (day < readyFrom || i < perFourWeeks) continue;
    const moving = Math.abs((median[i] ?? 0) - (median[i - perFourWeeks] ?? 0)) > SLOW;
    if (moving) continue;
    const chance = inside[i];
    if (chance === undefined && lastApplication !== undefined)
      return { date, why: { code: 'forecast.retest-settled' } };
    if (chance !== undefined && chance < 1 - OPEN)
      return {
        date,
        why:
          chance > OPEN
            ? { code: 'forecast.retest-open', parameters: { chance: { value: chance, dimension: 'share' } } }
            : { code: 'forecast.retest-outside', parameters: { chance: { value: 1 - chance, dimension: 'share' } } },
      };
  }
  return { date: dates[dates.length - 1] ?? start, why: { code: 'forecast.retest-routine' } };
}
