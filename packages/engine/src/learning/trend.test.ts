import { linearRegression } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../derivation/derivation.ts';
import { changeOf, trendOf } from './trend.ts';

const yearly = (values: readonly number[]) => values.map((ph, i) => ({ date: `${2010 + i}-04-01`, ph, sd: 0.15 }));

describe('change and trend', () => {
  it('needs 0.42 between two good composites (dynamics 7, MODEL)', () => {
    const [before, after] = yearly([6, 6.4]) as [ReturnType<typeof yearly>[0], ReturnType<typeof yearly>[0]];
    const { needed, real } = changeOf(before, after);
    expect(needed).toBeCloseTo(0.42, 2);
    expect(real).toBe(false);
    expect(changeOf(before, { ...after, ph: 6.45 }).real).toBe(true);
  });

  it.each([
    [6, 0.036],
    [8, 0.023],
    [10, 0.017],
  ])('knows the slope of %i yearly tests to %f a year (dynamics 7, MODEL)', (n, sd) => {
    const trend = trendOf(yearly(Array.from({ length: n }, (_, i) => 6 - 0.05 * i)));
    expect(trend?.sd).toBeCloseTo(sd, 3);
    expect(trend?.slope).toBeCloseTo(-0.05, 3);
    // -0.05 a year needs about 8 yearly tests.
    expect(trend?.real).toBe(n >= 8);
  });

  it('draws the line a general statistics library draws', () => {
    const values = [6.1, 5.9, 6.2, 5.7, 5.8, 5.5];
    const { m } = linearRegression(values.map((ph, i) => [Date.UTC(2010 + i, 3, 1) / 86_400_000 / 365.25, ph]));
    expect(trendOf(yearly(values))?.slope).toBeCloseTo(m, 9);
  });

  it('says nothing of two tests or of less than a year, and records its step', () => {
    expect(trendOf(yearly([6, 5]))).toBeUndefined();
    const recorder = createRecorder();
    trendOf(yearly([6, 5.9, 5.8]), recorder);
    expect(gaps(recorder.derivation())).toEqual([]);
  });
});
