import type { Decision } from '../plan/recommendation.ts';
import type { Ph } from '../units/si.ts';
import type { PlannedSample } from './summary.ts';

/** A group with fewer samples than this could point at a person (SDC_SUPPRESSION, from memory). */
export const SMALLEST_SHOWN = 5;

/** A sample without a code, a name, a date or a place of its own. */
export interface AnonymousSample {
  /** To a tenth. */
  readonly ph: Ph | undefined;
  readonly decision: Decision;
  /** Undefined where too few samples come from there. */
  readonly neighbourhood: string | undefined;
}

/**
 * The samples of a day as they may be given to others: neighbourhoods with few samples are left out, and when the
 * samples left out are few themselves the smallest neighbourhood goes with them. What kind of place it is stays out: the
 * only pot of a neighbourhood would point at its owner. Sorted by pH, so that the order of the day tells nothing.
 *
 * @param least a neighbourhood needs at least so many samples to be named
 * @source SDC_SUPPRESSION (from memory)
 */
export function anonymous(samples: readonly PlannedSample[], least = SMALLEST_SHOWN): readonly AnonymousSample[] {
  const named = namedFrom(samples, least);
  return samples
    .map(({ plan, neighbourhood }) => ({
      ph: plan.present === undefined ? undefined : Math.round(plan.present.mean * 10 + 1e-6) / 10,
      decision: plan.decision,
      neighbourhood: neighbourhood !== undefined && named.has(neighbourhood) ? neighbourhood : undefined,
    }))
    .sort(
      (a, b) =>
        (a.ph ?? 0) - (b.ph ?? 0) ||
        (a.neighbourhood ?? '').localeCompare(b.neighbourhood ?? '') ||
        a.decision.localeCompare(b.decision),
    );
}

function namedFrom(samples: readonly PlannedSample[], least: number): ReadonlySet<string> {
  const counts = new Map<string, number>();
  for (const { neighbourhood } of samples)
    if (neighbourhood !== undefined) counts.set(neighbourhood, (counts.get(neighbourhood) ?? 0) + 1);
  const large = [...counts].filter(([, count]) => count >= least).sort((a, b) => b[1] - a[1]);
  let unnamed = samples.length - large.reduce((sum, [, count]) => sum + count, 0);
  while (unnamed > 0 && unnamed < least) {
    const smallest = large.pop();
    if (smallest === undefined) break;
    unnamed += smallest[1];
  }
  return new Set(large.map(([name]) => name));
}
