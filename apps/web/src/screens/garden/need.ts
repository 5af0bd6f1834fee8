import type { Application, Recommendation } from '@sorrel/engine/plan';
import type { PlannedPlace } from '../../engine/garden-plan.ts';

/** What a place asks of the gardener, the most pressing first. */
export const needs = ['mend', 'do', 'find out', 'retest', 'choose', 'fine'] as const;
export type Need = (typeof needs)[number];

/** The part of a planned place that its need follows from. */
export type Asking = Pick<PlannedPlace, 'name' | 'plan'>;

/** @param day today, ISO 8601 */
export function needOf({ plan }: Asking, day: string): Need {
  if (plan === undefined) return 'mend';
  switch (plan.decision) {
    case 'raise':
    case 'lower':
      return 'do';
    case 'find out first':
      return 'find out';
    default:
      if (retestDue(plan, day)) return 'retest';
      return plan.decision === 'leave alone' ? 'fine' : 'choose';
  }
}

export const retestDue = ({ retest }: Recommendation, day: string): boolean =>
  retest !== undefined && retest.earliest <= day;

/** The application whose days have come or come next; later steps wait for their retest. */
export const nextApplication = (plan: Recommendation): Application | undefined =>
  plan.applications.find((each) => !each.onlyIfRetest);

/** How far the pH lies outside what is wanted, in pH units; 0 inside or when nothing is known. */
export function distance(plan: Recommendation | undefined): number {
  if (plan?.present === undefined) return 0;
  const { mean } = plan.present;
  return Math.max(0, plan.target.low - mean, mean - plan.target.high);
}

/** Places by need: the most pressing kind first, within it the earliest date, then the farthest from its range. */
export function byNeed<P extends Asking>(places: readonly P[], day: string): readonly P[] {
  const keyed = places.map((place, index) => ({
    place,
    index,
    kind: needs.indexOf(needOf(place, day)),
    start: startOf(place, day),
    far: distance(place.plan),
  }));
  keyed.sort((a, b) => a.kind - b.kind || a.start.localeCompare(b.start) || b.far - a.far || a.index - b.index);
  return keyed.map((each) => each.place);
}

/** First day of the work; what could already have been begun all starts today. */
function startOf({ plan }: Asking, day: string): string {
  const first = plan === undefined ? undefined : nextApplication(plan)?.earliest;
  return first === undefined || first < day ? day : first;
}

export function countByNeed(places: readonly Asking[], day: string): Readonly<Record<Need, number>> {
  const counts: Record<Need, number> = { mend: 0, do: 0, 'find out': 0, retest: 0, choose: 0, fine: 0 };
  for (const place of places) counts[needOf(place, day)]++;
  return counts;
}
