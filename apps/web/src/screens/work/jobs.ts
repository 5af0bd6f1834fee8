import type { Message } from '@sorrel/engine/derivation';
import type { Application } from '@sorrel/engine/plan';
import { addDays, addMonths } from '@sorrel/engine/units';
import type { PlannedPlace } from '../../engine/garden-plan.ts';

interface JobBase {
  readonly key: string;
  readonly planned: PlannedPlace;
  /** Days in which it is to be done, ISO 8601. */
  readonly from: string;
  readonly to: string;
}

/** A piece of work that a plan asks for. */
export type Job =
  | (JobBase & { readonly kind: 'spread'; readonly application: Application })
  | (JobBase & { readonly kind: 'retest'; readonly why: Message })
  | (JobBase & { readonly kind: 'find'; readonly ask: readonly Message[] })
  | (JobBase & { readonly kind: 'mend' });

export const spans = ['overdue', 'week', 'season', 'later'] as const;
export type Span = (typeof spans)[number];

/** Days of a week, today included. */
const WEEK = 6;
const SEASON_MONTHS = 3;

/** All work of a garden, in the order of its days. */
export function jobsOf(places: readonly PlannedPlace[], today: string): readonly Job[] {
  const jobs = places.flatMap((planned): Job[] => {
    const { plan, id } = planned;
    const soon = { planned, from: today, to: addDays(today, WEEK) };
    if (plan === undefined) return [{ ...soon, key: `${id} mend`, kind: 'mend' }];
    const spread = plan.applications.map(
      (application): Job => ({
        key: `${id} step ${application.number}`,
        planned,
        kind: 'spread',
        application,
        from: application.earliest,
        to: application.latest,
      }),
    );
    const find: Job[] =
      plan.decision === 'find out first' ? [{ ...soon, key: `${id} find`, kind: 'find', ask: plan.ask }] : [];
    const { retest } = plan;
    const test: Job[] =
      retest === undefined
        ? []
        : [
            {
              key: `${id} retest`,
              planned,
              kind: 'retest',
              why: retest.why,
              from: retest.earliest,
              to: retest.latest,
            },
          ];
    return [...find, ...spread, ...test];
  });
  return jobs.sort((a, b) => a.from.localeCompare(b.from) || a.to.localeCompare(b.to));
}

/** When a piece of work comes up, seen from today. */
export function spanOf({ from, to }: Pick<Job, 'from' | 'to'>, today: string): Span {
  if (to < today) return 'overdue';
  if (from <= addDays(today, WEEK)) return 'week';
  return from <= addMonths(today, SEASON_MONTHS) ? 'season' : 'later';
}
