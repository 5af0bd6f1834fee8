import type { CheckVerdict } from './meter-history.ts';
import { type ReadAt, toRepeat } from './to-repeat.ts';

export interface SampleReading extends ReadAt {
  readonly sample: string;
}

export interface JudgedCheck extends Pick<CheckVerdict, 'check' | 'order' | 'sound'> {
  readonly meter: string;
  /** The sample that was read a second time. */
  readonly sample?: string;
}

export interface Doubtful {
  readonly id: string;
  /** `meter`: read beside a check that failed; `duplicate`: read twice with two results. */
  readonly why: 'meter' | 'duplicate';
}

/**
 * Readings to take again: those of a meter beside a check in the buffer or in reference soil that failed, and samples
 * whose second reading differed, which says that the sample was not well mixed rather than that the meter is off.
 *
 * @param checks of all meters, with their verdicts
 * @param readings that stand; one that was taken again counts where it stands now
 * @returns in the order of the day
 * @source our judgement (SORREL); limits: almanac `quality-limits`
 */
export function doubtfulReadings(
  checks: readonly JudgedCheck[],
  readings: readonly SampleReading[],
): readonly Doubtful[] {
  const ofMeter = new Set(
    toRepeat(
      checks
        .filter(({ check }) => check !== 'duplicate')
        .map(({ order, meter, sound }) => ({ order, meter, passed: sound })),
      readings,
    ),
  );
  const twice = checks.filter(({ check, sound }) => check === 'duplicate' && !sound);
  return [...readings]
    .sort((a, b) => a.order - b.order)
    .flatMap(({ id, sample, order }): Doubtful[] => {
      if (ofMeter.has(id)) return [{ id, why: 'meter' }];
      return twice.some((each) => each.sample === sample && each.order > order) ? [{ id, why: 'duplicate' }] : [];
    });
}
