import type { Message } from '../derivation/message.ts';
import type { SoilTest } from '../evidence/soil-test.ts';
import { addMonths, laterOf } from '../units/calendar.ts';
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
  ph: Ph | undefined,
  carbonateKnown: boolean,
): readonly Message[] {
  if (decision === 'leave alone') return [];
  const list: Message[] = [];
  if (ph === undefined) list.push({ code: 'plan.ask-soil-test' });
  else if (!place.tests.some((test) => test.instrument === 'laboratory' && test.ph !== undefined))
    list.push({ code: 'plan.ask-laboratory' });
  if (ph !== undefined && ph > 7.2 && !carbonateKnown) list.push({ code: 'plan.ask-fizz' });
  list.push(...fromReadings);
  if (place.plants.length === 0 && place.target === undefined) list.push({ code: 'plan.ask-plants' });
  return list;
}

/** Plants that would do in the place as it is; only when changing the plants is the better answer. */
export function instead(decision: Decision, ph: Ph | undefined, place: Place): readonly string[] {
  return ph !== undefined && (decision === 'not practical' || decision === 'grow something else')
    ? suits(ph, place.kind, 8)
    : [];
}

/** Routine retest of a place that is left alone: three years after the last test, in the same season. */
export function routineRetest(lastTest: IsoDate, settings: Settings): NonNullable<Recommendation['retest']> {
  const due = laterOf(addMonths(lastTest, ROUTINE_MONTHS), settings.today);
  return { earliest: due, latest: addMonths(due, 3), why: { code: 'plan.retest-routine' } };
}
