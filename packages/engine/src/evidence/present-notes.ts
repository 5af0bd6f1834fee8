import type { Message } from '../derivation/message.ts';
import { dayNumber } from '../units/calendar.ts';
import type { IsoDate } from '../units/si.ts';
import { seasonOf, swingsWithSeason } from './season.ts';
import type { SoilTest } from './soil-test.ts';

/** Days after lime, feed or compost in which a test is unsettled: three months (RHS_2018). */
export const UNSETTLED_DAYS = 92;
/** Age from which a retest is due: three years (PSU_LAWN). */
const OLD_YEARS = 3;
/** Fewer cores than this and the reader is warned (our default beside CLEMSON_ASL). */
export const FEW_CORES = 8;

const NONE: readonly Message[] = [];

export interface NoteFacts {
  readonly applications?: readonly { readonly date: IsoDate }[] | undefined;
  readonly hemisphere?: 'north' | 'south' | undefined;
}

/** Days from the latest application up to the test, or undefined when there was none before it. */
export function daysSinceApplication(
  test: Pick<SoilTest, 'date'>,
  applications: readonly { readonly date: IsoDate }[],
): number | undefined {
  const day = dayNumber(test.date);
  let least: number | undefined;
  for (const { date } of applications) {
    const gap = day - dayNumber(date);
    if (gap >= 0 && (least === undefined || gap < least)) least = gap;
  }
  return least;
}

/** What must be said about the tests that today's pH rests on. Costs nothing when there is nothing to say. */
export function notesOn(
  tests: readonly SoilTest[],
  today: number,
  facts: NoteFacts,
  disagree: boolean,
): readonly Message[] {
  let notes: Message[] | undefined;
  const say = (message: Message): void => {
    if (notes === undefined) notes = [message];
    else if (!notes.some((one) => one.code === message.code)) notes.push(message);
  };
  let home = true;
  let newest = Number.NEGATIVE_INFINITY;
  for (const test of tests) {
    if (test.instrument === 'laboratory') home = false;
    newest = Math.max(newest, dayNumber(test.date));
    if (test.instrument === 'laboratory' && test.cores !== undefined && test.cores < FEW_CORES)
      say({ code: 'evidence.few-cores', parameters: { cores: test.cores } });
    const method = test.ph?.method;
    if (method === 'unstated') say({ code: 'evidence.method-unstated' });
    else if (method === 'cacl2-0.01M' || method === 'kcl-1M') say({ code: 'evidence.converted' });
    if (method !== undefined && swingsWithSeason(method) && seasonOf(test.date, facts.hemisphere) === 'autumn')
      say({ code: 'evidence.autumn-test' });
    if (facts.applications !== undefined && facts.applications.length > 0) {
      const gap = daysSinceApplication(test, facts.applications);
      if (gap !== undefined && gap <= UNSETTLED_DAYS)
        say({ code: 'evidence.soon-after-application', parameters: { date: test.date } });
      if (facts.applications.some(({ date }) => dayNumber(date) > dayNumber(test.date) && dayNumber(date) <= today))
        say({ code: 'evidence.changed-since', parameters: { date: test.date } });
    }
  }
  if (home) say({ code: 'evidence.home-only' });
  const years = Math.floor((today - newest) / 365.25);
  if (years >= OLD_YEARS) say({ code: 'evidence.old-test', parameters: { years } });
  if (disagree) say({ code: 'evidence.tests-differ' });
  return notes ?? NONE;
}
