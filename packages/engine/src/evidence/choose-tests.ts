import type { Recorder } from '../derivation/derivation.ts';
import type { Message } from '../derivation/message.ts';
import { dayNumber } from '../units/calendar.ts';
import type { IsoDate } from '../units/si.ts';
import { type Comparable, comparable, type PlaceFacts } from './comparable.ts';
import { isMediaMethod } from './ph-conversion/to-water-ph.ts';
import type { SoilTest } from './soil-test.ts';

export interface SetAside {
  readonly test: SoilTest;
  readonly reason: Message;
}

export interface PresentOptions extends PlaceFacts {
  /** Earlier applications: a test before the latest of them no longer tells today's pH. */
  readonly applications?: readonly { readonly date: IsoDate }[] | undefined;
  /** Spread between cores, 0.3 when unknown. */
  readonly coreSd?: number | undefined;
  readonly hemisphere?: 'north' | 'south' | undefined;
  /** True for potting mixes, where media tests are preferred. */
  readonly media?: boolean | undefined;
}

/** Keeps the tests that speak of today on one scale; says why the others do not. */
export function choose(
  tests: readonly SoilTest[],
  now: number,
  options: PresentOptions,
  setAside: SetAside[],
  recorder?: Recorder,
): Comparable[] {
  let lastApplication = Number.NEGATIVE_INFINITY;
  for (const { date } of options.applications ?? []) {
    const day = dayNumber(date);
    if (day <= now && day > lastApplication) lastApplication = day;
  }
  const dated = tests.filter((test) => {
    if (test.ph === undefined) return false;
    if (dayNumber(test.date) <= now) return true;
    setAside.push({ test, reason: { code: 'evidence.test-in-future', parameters: { date: test.date } } });
    return false;
  });
  const isMedia = (test: SoilTest): boolean => test.ph !== undefined && isMediaMethod(test.ph.method);
  const media = dated.some(isMedia) && (options.media === true || dated.every(isMedia));
  const after = dated.some((test) => dayNumber(test.date) > lastApplication && isMedia(test) === media);
  const kept: Comparable[] = [];
  for (const test of dated) {
    let reason: Message | undefined;
    if (isMedia(test) !== media) reason = { code: 'evidence.other-scale' };
    else if (after && dayNumber(test.date) <= lastApplication)
      reason = { code: 'evidence.before-application', parameters: { date: test.date } };
    else {
      const one = comparable(test, options, recorder);
      if (one) kept.push(one);
      else reason = { code: 'evidence.salty-cacl2' };
    }
    if (reason) setAside.push({ test, reason });
  }
  const measured = new Set(kept.filter(inWater).map(sameReport));
  return kept.filter((one) => {
    if (inWater(one) || !measured.has(sameReport(one))) return true;
    setAside.push({ test: one.test, reason: { code: 'evidence.water-measured' } });
    return false;
  });
}

const inWater = (one: Comparable): boolean => one.test.ph?.method.startsWith('water') ?? false;
const sameReport = (one: Comparable): string => `${one.test.date}|${one.test.instrument}|${one.test.laboratory ?? ''}`;
