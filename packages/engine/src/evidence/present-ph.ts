import type { Recorder } from '../derivation/derivation.ts';
import type { Message } from '../derivation/message.ts';
import type { PhEstimate } from '../soil/soil.ts';
import { dayNumber } from '../units/calendar.ts';
import type { IsoDate, Ph } from '../units/si.ts';
import { choose, type PresentOptions, type SetAside } from './choose-tests.ts';
import { combine, type DayReading, groupByDay } from './combine-ph.ts';
import { type Comparable, comparable } from './comparable.ts';
import { isMediaMethod } from './ph-conversion/to-water-ph.ts';
import { notesOn } from './present-notes.ts';
import type { SoilTest } from './soil-test.ts';
import { CORE_SD, instrumentSd, YEAR_SD } from './test-error.ts';

export interface UsedTest {
  readonly test: SoilTest;
  /** Its pH on the scale of the answer. */
  readonly mean: Ph;
  /** Its error today, with age and conversion. */
  readonly sd: number;
}

/** Today's pH of a place, with its error, and which tests it rests on. */
export interface PresentPh extends PhEstimate {
  /** `water` (1:1 to 1:2.5), or `media` for tests of a potting mix, which have their own scale. */
  readonly scale: 'water' | 'media';
  /** Day of the latest test that was used. */
  readonly date: IsoDate;
  readonly used: readonly UsedTest[];
  readonly setAside: readonly SetAside[];
  /** What the reader must know: age, season, few cores, soon after an application, home readings that differ. */
  readonly notes: readonly Message[];
  /** False when only home readings were used: no first dose may rest on them. */
  readonly mayDose: boolean;
}

const NO_OPTIONS: PresentOptions = {};
const NONE: readonly SetAside[] = [];
const YEAR = 365.25;

const ageOf = (date: IsoDate, today: number): number => Math.max(0, today - dayNumber(date)) / YEAR;

/** One test needs no combining: the fast way through. */
function single(
  one: Comparable,
  today: number,
  options: PresentOptions,
  setAside: readonly SetAside[],
  recorder?: Recorder,
): PresentPh {
  const { test, mean } = one;
  const coreSd = options.coreSd ?? CORE_SD;
  const age = ageOf(test.date, today);
  const sd = Math.sqrt((coreSd * coreSd) / one.cores + one.fixed + YEAR_SD * YEAR_SD * age);
  if (recorder) record(recorder, [{ test, mean, sd }], mean, sd);
  return {
    mean,
    sd,
    scale: test.ph !== undefined && isMediaMethod(test.ph.method) ? 'media' : 'water',
    date: test.date,
    used: [{ test, mean, sd }],
    setAside,
    notes: notesOn([test], today, options, false),
    mayDose: test.instrument === 'laboratory',
  };
}

function record(recorder: Recorder, used: readonly UsedTest[], mean: Ph, sd: number): void {
  recorder.step({
    symbol: 'pH',
    title: used.length === 1 ? "Today's pH, from one soil test" : "Today's pH, from several soil tests",
    formula: 'pH = sum(pH_i/s_i^2) / sum(1/s_i^2)',
    terms: used.flatMap((one) => [
      { symbol: `pH_${one.test.id}`, value: one.mean, unit: 'pH', origin: 'step' as const },
      { symbol: `s_${one.test.id}`, value: one.sd, unit: 'pH', origin: 'choice' as const },
    ]),
    value: mean,
    unit: 'pH',
    sources: ['CON26', 'FV55', 'MODEL'],
    basis: 'derived',
    note: `sd ${sd.toFixed(2)}; each s_i holds the cores, the instrument, the conversion and 0.10 a root year of age`,
  });
}

/**
 * Today's pH of one place from all its soil tests. Tests of one day are averaged as pH, with the laboratory's error kept
 * whole; days are weighted by precision, each with 0.10 pH a root year of age (MODEL). A pH measured in water beats one
 * converted from the same day; home readings far from the laboratory's are set aside and said; when tests disagree the
 * error grows.
 *
 * @param tests all tests of the place, in any order
 * @param today ISO date
 * @returns undefined when no test gives a usable pH
 */
export function presentPh(
  tests: readonly SoilTest[],
  today: IsoDate,
  options: PresentOptions = NO_OPTIONS,
  recorder?: Recorder,
): PresentPh | undefined {
  const now = dayNumber(today);
  if (tests.length === 1) {
    const test = tests[0] as SoilTest;
    if (dayNumber(test.date) > now) return undefined;
    const one = comparable(test, options, recorder);
    return one && single(one, now, options, NONE, recorder);
  }
  const setAside: SetAside[] = [];
  const usable = choose(tests, now, options, setAside, recorder);
  const [first] = usable;
  if (first === undefined) return undefined;
  if (usable.length === 1) return single(first, now, options, setAside, recorder);
  return several(usable, now, options, setAside, recorder);
}

function several(
  usable: readonly Comparable[],
  now: number,
  options: PresentOptions,
  setAside: SetAside[],
  recorder?: Recorder,
): PresentPh {
  const varianceToday = (day: DayReading): number => day.variance + YEAR_SD * YEAR_SD * ageOf(day.date, now);
  const floorOf = (days: readonly DayReading[]): number =>
    Math.min(...days.flatMap((day) => day.members.map((one) => instrumentSd(one.test.instrument))));
  const all = groupByDay(usable, options.coreSd ?? CORE_SD);
  const laboratory = all.filter((day) => !day.home);
  let days = all;
  if (laboratory.length > 0 && laboratory.length < all.length) {
    const lab = combine(
      laboratory.map((day) => day.mean),
      laboratory.map(varianceToday),
      floorOf(laboratory),
    );
    days = all.filter((day) => {
      const far = Math.abs(day.mean - lab.mean) > 1.96 * Math.sqrt(varianceToday(day) + lab.sd * lab.sd);
      if (!day.home || !far) return true;
      const parameters = {
        home: { value: day.mean, dimension: 'ph' },
        lab: { value: lab.mean, dimension: 'ph' },
      } as const;
      const reason: Message = { code: 'evidence.home-differs', parameters };
      for (const { test } of day.members) setAside.push({ test, reason });
      return false;
    });
  }
  const together = combine(
    days.map((day) => day.mean),
    days.map(varianceToday),
    floorOf(days),
  );
  const used = days.flatMap((day) =>
    day.members.map(({ test, mean }): UsedTest => ({ test, mean, sd: Math.sqrt(varianceToday(day)) })),
  );
  const chosen = used.map((one) => one.test);
  if (recorder) record(recorder, used, together.mean, together.sd);
  const differing = setAside.filter((one) => one.reason.code === 'evidence.home-differs').map((one) => one.reason);
  return {
    mean: together.mean,
    sd: together.sd,
    scale: chosen.some((test) => test.ph !== undefined && isMediaMethod(test.ph.method)) ? 'media' : 'water',
    date:
      chosen
        .map((test) => test.date)
        .sort()
        .at(-1) ?? '',
    used,
    setAside,
    notes: [...new Set(differing), ...notesOn(chosen, now, options, together.disagree)],
    mayDose: chosen.some((test) => test.instrument === 'laboratory'),
  };
}
