import type { Message } from '../derivation/message.ts';
import { averageDay, type DayReading } from '../evidence/combine-ph.ts';
import { type Comparable, comparable } from '../evidence/comparable.ts';
import type { SoilTest } from '../evidence/soil-test.ts';
import { CORE_SD } from '../evidence/test-error.ts';
import type { ForecastApplication } from '../forecast/types.ts';
import { dayNumber } from '../units/calendar.ts';
import type { IsoDate, Metre } from '../units/si.ts';
import type { LeftOut, TestRole } from './types.ts';

/** Ground limestone and sulfur must lie this long before a test teaches anything (dynamics 7; RHS_2018). */
export const WAIT_DAYS = 91;
/** Pots are kept warm and moist: four weeks (acidification 11). Nothing is judged sooner. */
const LEAST_WAIT_DAYS = 28;
/** Fast materials are waited for this many times their e-folding time: 95 % has reacted. */
const FAST_TIMES = 3;
/** Depths that differ by less than this are one depth (judgement). */
const SAME_DEPTH: Metre = 0.011;

export interface Series {
  readonly readings: readonly (DayReading & { readonly role: TestRole })[];
  readonly leftOut: readonly LeftOut[];
  /** Why some readings tell only the pH of their day. */
  readonly notes: readonly Message[];
}

/** Days from spreading a material until a test may teach how much the soil resists. */
export function waitFor(application: ForecastApplication, container: boolean): number {
  const { reaction } = application;
  if (reaction.law === 'fast')
    return Math.min(WAIT_DAYS, Math.max(LEAST_WAIT_DAYS, Math.ceil(FAST_TIMES * reaction.days)));
  return container ? LEAST_WAIT_DAYS : WAIT_DAYS;
}

const text = (value: number | string | undefined): string => (value === undefined ? '' : String(value));

/** An order that depends on what a test says, not on when it was entered. */
function byContent(a: SoilTest, b: SoilTest): number {
  const key = (test: SoilTest) =>
    [
      test.date,
      test.instrument,
      text(test.laboratory),
      text(test.ph?.method),
      text(test.ph?.value),
      text(test.depth),
      text(test.cores),
      test.id,
    ].join('|');
  const [one, other] = [key(a), key(b)];
  return one < other ? -1 : one > other ? 1 : 0;
}

/**
 * The method and depth that most of the record uses (laboratory tests first, then the most days, then the newest).
 * Only readings of one method and depth can be compared without a conversion's error.
 */
function mainSeries(tests: readonly Comparable[]): { readonly method: string; readonly depth: Metre } | undefined {
  const groups = new Map<string, { days: Set<string>; laboratory: Set<string>; newest: string; one: Comparable }>();
  for (const one of tests) {
    const key = `${one.test.ph?.method ?? ''}|${Math.round(one.test.depth / SAME_DEPTH)}`;
    const group = groups.get(key) ?? { days: new Set(), laboratory: new Set(), newest: '', one };
    group.days.add(one.test.date);
    if (one.test.instrument === 'laboratory') group.laboratory.add(one.test.date);
    if (one.test.date > group.newest) group.newest = one.test.date;
    groups.set(key, group);
  }
  const ranked = [...groups.values()].sort(
    (a, b) =>
      b.laboratory.size - a.laboratory.size ||
      b.days.size - a.days.size ||
      (a.newest < b.newest ? 1 : a.newest > b.newest ? -1 : 0),
  );
  const best = ranked[0]?.one.test;
  return best === undefined ? undefined : { method: best.ph?.method ?? '', depth: best.depth };
}

/**
 * Readings of a record in the order of their days, replicates averaged as pH with the instrument's error kept whole.
 *
 * A reading less than three months after ground limestone, or by another method, tells the pH of its day but not how
 * much the soil resists. One from another depth is of another soil and is left out.
 *
 * @param today ISO date; later tests are left out
 */
export function seriesOf(
  tests: readonly SoilTest[],
  applications: readonly ForecastApplication[],
  container: boolean,
  today: IsoDate,
): Series {
  const now = dayNumber(today);
  const leftOut: LeftOut[] = [];
  const notes: Message[] = [];
  const usable: Comparable[] = [];
  for (const test of [...tests].sort(byContent)) {
    if (test.ph === undefined) continue;
    if (dayNumber(test.date) > now) {
      leftOut.push({ test, reason: { code: 'learning.in-future', parameters: { date: test.date } } });
      continue;
    }
    const one = comparable(test);
    if (one === undefined)
      leftOut.push({ test, reason: { code: 'learning.not-comparable', parameters: { date: test.date } } });
    else usable.push(one);
  }
  const main = mainSeries(usable);
  const groups = new Map<string, Comparable[]>();
  for (const one of usable) {
    const { test } = one;
    if (main !== undefined && Math.abs(test.depth - main.depth) > SAME_DEPTH) {
      leftOut.push({ test, reason: { code: 'learning.other-depth', parameters: { date: test.date } } });
      continue;
    }
    const key = [test.date, test.instrument, text(test.laboratory), test.ph?.method].join('|');
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  const readings = [...groups.values()].map((members) => {
    const day = averageDay(members, CORE_SD);
    const other = members[0]?.test.ph?.method !== main?.method;
    const soon = applications
      .filter((application) => {
        const days = dayNumber(day.date) - dayNumber(application.date);
        return days > 0 && days < waitFor(application, container);
      })
      .map(({ date }) => date)
      .sort()
      .at(-1);
    if (other) notes.push({ code: 'learning.other-method', parameters: { date: day.date } });
    else if (soon !== undefined)
      notes.push({ code: 'learning.too-soon', parameters: { date: day.date, spread: soon } });
    return { ...day, role: other || soon !== undefined ? ('pH only' as const) : ('learned from' as const) };
  });
  return { readings, leftOut, notes };
}
