import type { Ph } from '../units/si.ts';

/** A gap smaller than this says nothing of the soil: it is within the error of one pH reading. [SORREL, judgement] */
export const LEAST_GAP = 0.1;

const reaches = (target: Ph, present: Ph): boolean => target - present > LEAST_GAP - 1e-9;

/**
 * The published target nearest to the wanted one, among those at least 0.1 above the present pH.
 *
 * @param published targets, ascending
 * @returns undefined when the present pH has passed them all
 */
export function nearestTarget(published: readonly Ph[], wanted: Ph, present: Ph): Ph | undefined {
  let nearest: Ph | undefined;
  for (const target of published)
    if (reaches(target, present))
      if (nearest === undefined || Math.abs(target - wanted) < Math.abs(nearest - wanted) - 1e-9) nearest = target;
  return nearest;
}

/**
 * Target for a method that takes any between two limits: the wanted one, or the upper limit when the present
 * pH has passed the wanted one.
 *
 * @returns undefined when the present pH has passed the upper limit
 */
export function targetWithin(low: Ph, high: Ph, wanted: Ph, present: Ph): Ph | undefined {
  const target = Math.min(Math.max(wanted, low), high);
  if (reaches(target, present)) return target;
  return reaches(high, present) ? high : undefined;
}
