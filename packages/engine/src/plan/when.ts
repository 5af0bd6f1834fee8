import { addDays, addMonths, laterOf, monthOf } from '../units/calendar.ts';
import type { IsoDate } from '../units/si.ts';
import type { Settings } from './place.ts';

export type Work = 'lime' | 'sulfur' | 'lawn sulfur' | 'ash' | 'sulfate';

export interface Window {
  readonly earliest: IsoDate;
  readonly latest: IsoDate;
}

/** Sulfur is put down when soil warms: below about 10 °C oxidation is slow, useful from 13 °C (practice calendar, memory). */
const SULFUR_WARM = 10;
/** Nothing is spread on frozen ground. */
const THAWED = 1;
/** Lawns are not given sulfur in summer heat (CLEMEC707: only below 75 °F, memory). */
const LAWN_HOT = 20;

/** Months (0 = January) in which the work may be done. Without soil temperatures a cool temperate year is assumed. */
function fit(work: Work, settings: Settings): readonly boolean[] {
  const { soilTemperature, hemisphere } = settings;
  const months = Array.from({ length: 12 }, (_, month) => {
    if (soilTemperature !== undefined) {
      const warmth = soilTemperature[month] ?? 0;
      // Sulfur put down as the ground cools would lie there until spring.
      if (work === 'sulfur') return warmth >= SULFUR_WARM && (soilTemperature[(month + 1) % 12] ?? 0) >= SULFUR_WARM;
      if (work === 'lawn sulfur') return warmth >= SULFUR_WARM && warmth < LAWN_HOT;
      return warmth >= THAWED;
    }
    const season = hemisphere === 'north' ? month : (month + 6) % 12;
    if (work === 'sulfur') return season >= 3 && season <= 7;
    if (work === 'lawn sulfur') return season === 3 || season === 4 || season === 8;
    return season >= 2 && season <= 10;
  });
  // A climate too cold for the rule still needs an answer: the warmest month.
  if (!months.includes(true)) months[hemisphere === 'north' ? 6 : 0] = true;
  return months;
}

/**
 * First fit stretch of weather for a piece of work, not before a date and at most two months long.
 *
 * @param work what is spread
 * @param notBefore ISO date
 * @param settings hemisphere and, if known, monthly soil temperature at 10 cm
 * @source practice calendar rules `no_frozen`, `sulfur_temp`, `uk_lime_season` (memory where marked there)
 */
export function windowFor(work: Work, notBefore: IsoDate, settings: Settings): Window {
  let known = windows.get(settings);
  if (known === undefined) {
    known = { lime: new Map(), sulfur: new Map(), 'lawn sulfur': new Map(), ash: new Map(), sulfate: new Map() };
    windows.set(settings, known);
  }
  let window = known[work].get(notBefore);
  if (window === undefined) {
    window = firstWindow(work, notBefore, settings);
    known[work].set(notBefore, window);
  }
  return window;
}

/** Windows already found: thousands of places share one calendar. */
const windows = new WeakMap<Settings, Record<Work, Map<IsoDate, Window>>>();

function firstWindow(work: Work, notBefore: IsoDate, settings: Settings): Window {
  const months = fit(work, settings);
  let earliest = notBefore;
  for (let guard = 0; guard < 12 && !months[monthOf(earliest) - 1]; guard++) earliest = firstOfNextMonth(earliest);
  let latest = earliest;
  for (let length = 0; length < 2; length++) {
    const next = firstOfNextMonth(latest);
    latest = next;
    if (!months[monthOf(next) - 1]) break;
  }
  return { earliest, latest: laterOf(earliest, addDays(latest, -1)) };
}

/** Months, from `from`, until `count` months of warm soil (10 °C or more, as for spreading sulfur) have passed. */
export function afterWarmMonths(from: IsoDate, count: number, settings: Settings): IsoDate {
  if (settings.soilTemperature === undefined) return addMonths(from, count);
  let date = from;
  let warm = 0;
  for (let guard = 0; guard < 36 && warm < count; guard++) {
    if ((settings.soilTemperature[monthOf(date) - 1] ?? 0) >= SULFUR_WARM) warm++;
    date = addMonths(date, 1);
  }
  return date;
}

const firstOfNextMonth = (date: IsoDate): IsoDate => addMonths(`${date.slice(0, 8)}01`, 1);
