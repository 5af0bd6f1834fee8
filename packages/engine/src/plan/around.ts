import type { Message } from '../derivation/message.ts';
import type { PresentPh } from '../evidence/present-ph.ts';
import type { SoilTest } from '../evidence/soil-test.ts';
import type { FreeLime } from '../soil/free-lime.ts';
import { addDays, addMonths, laterOf } from '../units/calendar.ts';
import type { Fraction, IsoDate, Ph } from '../units/si.ts';
import type { Place, Settings } from './place.ts';
import type { Decision, Recommendation } from './recommendation.ts';
import { suits } from './suits.ts';

/** Months between routine tests of a place that is fine (PSU_LAWN: three years). */
const ROUTINE_MONTHS = 36;
/** Lead levels at which to talk and to refer (EPA_2024; the cautious reading of `lead-levels`). */
const LEAD_TALK = 100e-6;
const LEAD_REFER = 200e-6;

/** Newest laboratory test, whose nutrients and texture are trusted most; undefined when there is none. */
export function newestLaboratory(tests: readonly SoilTest[]): SoilTest | undefined {
  let newest: SoilTest | undefined;
  for (const test of tests)
    if (test.instrument === 'laboratory' && (newest === undefined || test.date > newest.date)) newest = test;
  return newest;
}

/** Highest total lead of any test, kg/kg; undefined when nobody measured it. */
export function highestLead(tests: readonly SoilTest[]): Fraction | undefined {
  let highest: Fraction | undefined;
  for (const test of tests)
    if (test.lead !== undefined && (highest === undefined || test.lead > highest)) highest = test.lead;
  return highest;
}

/**
 * Cautions that belong to the place whatever is done: lead, and readings where a professional comes first.
 *
 * @source practice note section 10 (EPA_2024, EELP_2025; refer-out list memory)
 */
export function placeCautions(place: Place, ph: Ph | undefined, lead: Fraction | undefined): readonly Message[] {
  const cautions: Message[] = [];
  if (lead !== undefined && lead >= LEAD_TALK)
    cautions.push({
      code: lead >= LEAD_REFER ? 'plan.caution-lead-refer' : 'plan.caution-lead-talk',
      parameters: { lead: `${Math.round(lead * 1e6)} mg/kg` },
    });
  if (ph !== undefined && place.medium !== 'soilless' && (ph < 4 || ph > 8.5))
    cautions.push({ code: 'plan.caution-refer-extreme' });
  return cautions;
}

/** What to find out next, best first. */
export function asks(
  decision: Decision,
  place: Place,
  fromReadings: readonly Message[],
  present: PresentPh | undefined,
  freeLime: FreeLime | undefined,
): readonly Message[] {
  const pot = place.kind === 'container';
  const list: Message[] = [];
  if (present === undefined) list.push({ code: pot ? 'plan.pot-no-test' : 'plan.ask-soil-test' });
  else {
    if (decision !== 'leave alone') {
      if (!present.mayDose) list.push({ code: pot ? 'plan.pot-no-test' : 'plan.ask-laboratory' });
      if (!pot && freeLime?.class === 'test first') list.push({ code: 'plan.ask-fizz' });
      if (decision !== 'not practical' && decision !== 'grow something else') list.push(...fromReadings);
    }
  }
  if (pot && place.water === undefined) list.push({ code: 'plan.ask-water' });
  if (place.plants.length === 0 && place.target === undefined) list.push({ code: 'plan.ask-plants' });
  return list;
}

/** Plants that would do in the place as it is; only when changing the plants is the better answer. */
export function instead(decision: Decision, ph: Ph | undefined, place: Place): readonly string[] {
  return ph !== undefined && (decision === 'not practical' || decision === 'grow something else')
    ? suits(ph, place.kind, 8)
    : [];
}

/**
 * When to test a place again that gets no dose: three years after the last test (PSU_LAWN); pots in four weeks, because
 * small volumes and their water move fast. Undefined when a test is what is missing.
 */
export function retestOf(
  decision: Decision,
  place: Place,
  lastTest: IsoDate | undefined,
  settings: Settings,
): Recommendation['retest'] {
  if (lastTest === undefined || decision === 'find out first') return undefined;
  if (place.kind === 'container')
    return {
      earliest: addDays(settings.today, 28),
      latest: addDays(settings.today, 42),
      why: { code: 'plan.retest-pot' },
    };
  const due = laterOf(addMonths(lastTest, ROUTINE_MONTHS), settings.today);
  return { earliest: due, latest: addMonths(due, 3), why: { code: 'plan.retest-routine' } };
}
