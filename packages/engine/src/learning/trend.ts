import type { Recorder } from '../derivation/derivation.ts';
import { changeBeyondError } from '../evidence/detectable-change.ts';
import { dayNumber } from '../units/calendar.ts';
import type { IsoDate, Ph } from '../units/si.ts';
import type { Change, LearnedTest, Trend } from './types.ts';

const YEAR = 365.25;
const Z = 1.96;

export interface Dated {
  readonly date: IsoDate;
  readonly ph: Ph;
  readonly sd: number;
}

/** A reading that does not fit counts with the distance to what was expected as its error: less, but it counts. */
export function withDoubt({ date, ph, sd, expected }: LearnedTest): Dated {
  return { date, ph, sd: expected === undefined ? sd : Math.max(sd, Math.abs(ph - expected.mean)) };
}

/**
 * Whether two tests differ by more than their errors: `|d| > 1.96·√(s1² + s2²)`, 0.42 for two good composites.
 * Source: MODEL (dynamics section 7).
 */
export function changeOf(before: Dated, after: Dated, recorder?: Recorder): Change {
  const change = after.ph - before.ph;
  const needed = changeBeyondError(before.sd, after.sd, Z);
  const real = Math.abs(change) > needed;
  if (recorder)
    recorder.step({
      symbol: 'd_min',
      title: 'Smallest difference of the two tests that is more than chance',
      formula: 'd_min = 1.96 sqrt(s_1^2 + s_2^2)',
      terms: [
        { symbol: 's_1', value: before.sd, unit: 'pH', origin: 'choice' },
        { symbol: 's_2', value: after.sd, unit: 'pH', origin: 'choice' },
      ],
      value: needed,
      unit: 'pH',
      sources: ['MODEL', 'FV55'],
      basis: 'derived',
      note: `the tests differ by ${change.toFixed(2)}`,
    });
  return { from: before.date, to: after.date, change, needed, real };
}

/**
 * Straight line through readings, weighted by their errors:
 * `slope = sum w (t − t̄)(pH − p̄)/sum w (t − t̄)²`, `sd = 1/√(sum w (t − t̄)²)`, w = 1/s². With equal errors the sd is
 * 0.15/√(sum (t − t̄)²): 0.036 pH a year for 6 yearly tests, 0.023 for 8, 0.017 for 10.
 *
 * @param readings in any order
 * @returns undefined for fewer than three readings or less than a year
 * Source: MODEL (dynamics section 7).
 */
export function trendOf(readings: readonly Dated[], recorder?: Recorder): Trend | undefined {
  const sorted = [...readings].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : a.ph - b.ph));
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (sorted.length < 3 || first === undefined || last === undefined) return undefined;
  const start = dayNumber(first.date);
  if (dayNumber(last.date) - start < YEAR) return undefined;
  const years = sorted.map(({ date }) => (dayNumber(date) - start) / YEAR);
  let weight = 0;
  let meanYear = 0;
  let meanPh = 0;
  for (const [i, { ph, sd }] of sorted.entries()) {
    const w = 1 / (sd * sd);
    weight += w;
    meanYear += w * (years[i] as number);
    meanPh += w * ph;
  }
  meanYear /= weight;
  meanPh /= weight;
  let across = 0;
  let square = 0;
  for (const [i, { ph, sd }] of sorted.entries()) {
    const t = (years[i] as number) - meanYear;
    across += (t * (ph - meanPh)) / (sd * sd);
    square += (t * t) / (sd * sd);
  }
  const slope = across / square;
  const sd = 1 / Math.sqrt(square);
  if (recorder)
    recorder.step({
      symbol: 'slope',
      title: 'Change of pH in a year, by a straight line through the tests',
      formula: 'slope = sum(w (t - t_mean) (pH - pH_mean)) / sum(w (t - t_mean)^2), w = 1/s^2',
      terms: sorted.flatMap(({ date, ph, sd: error }) => [
        { symbol: `pH (${date})`, value: ph, unit: 'pH', origin: 'entered' as const },
        { symbol: `s (${date})`, value: error, unit: 'pH', origin: 'choice' as const },
      ]),
      value: slope,
      unit: 'pH/yr',
      sources: ['MODEL'],
      basis: 'derived',
      note: `standard error ${sd.toFixed(3)}`,
    });
  return { from: first.date, to: last.date, readings: sorted.length, slope, sd, real: Math.abs(slope) > Z * sd };
}
