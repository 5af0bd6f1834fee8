import { bufferRange } from '../evidence/buffer-check.ts';
import type { SoilTest } from '../evidence/soil-test.ts';
import { isIsoDate } from '../units/calendar.ts';
import type { IsoDate } from '../units/si.ts';

const realDays = new Map<string, boolean>();

/** Whether a text is a day of the calendar; a table repeats few days. */
function realDay(date: string): boolean {
  const known = realDays.get(date);
  if (known !== undefined) return known;
  if (realDays.size > 5000) realDays.clear();
  const real = isIsoDate(date);
  realDays.set(date, real);
  return real;
}

const within = (value: number | undefined, high: number): boolean =>
  value === undefined || (value >= 0 && value <= high);

/**
 * True when a test of a table lies so far inside every limit that `checkSoilTest` has nothing to say about it. On any
 * doubt it is false and the full check, which costs some microseconds, decides.
 */
export function plainlySound(test: SoilTest, today: IsoDate): boolean {
  const { ph, buffer } = test;
  if (!realDay(test.date) || test.date > today) return false;
  if (ph !== undefined && !(ph.value >= 3 && ph.value <= 10)) return false;
  if (buffer !== undefined) {
    const range = bufferRange(buffer.method);
    if (!(buffer.value >= range.lowest && buffer.value <= range.start)) return false;
  }
  if (test.depth < 0.02 || test.depth > 0.9) return false;
  if (test.cores !== undefined && !(test.cores >= 1 && test.cores <= 100)) return false;
  if (test.organicCarbon !== undefined || test.scoopedDensity !== undefined) return false;
  if (test.baseSaturation !== undefined && (test.cec === undefined || !within(test.baseSaturation, 1))) return false;
  return (
    within(test.cec, 0.6) &&
    within(test.acidity, 0.6) &&
    within(test.aluminium, 0.3) &&
    within(test.calcium, 0.6) &&
    within(test.magnesium, 0.3) &&
    within(test.potassium, 0.1) &&
    within(test.sodium, 0.1) &&
    within(test.organicMatter, 0.9) &&
    within(test.carbonate, 0.9) &&
    within(test.conductivity, 1) &&
    within(test.lead, 0.05)
  );
}
