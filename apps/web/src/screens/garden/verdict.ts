import type { PlannedPlace } from '../../engine/garden-plan.ts';
import type { Speaker } from '../../engine/speaker.ts';
import type { IconName } from '../../kit/icon.tsx';
import type { PhMarks } from '../../ph-line/ph-scale.ts';
import { days, label, type WebCode } from '../../words/label.ts';
import { type Need, needOf, nextApplication } from './need.ts';

export const needLabel: Readonly<Record<Need, WebCode>> = {
  mend: 'web.need-mend',
  do: 'web.need-do',
  'find out': 'web.need-find-out',
  retest: 'web.need-retest',
  choose: 'web.need-choose',
  fine: 'web.need-fine',
};

export const needIcon: Readonly<Record<Need, IconName>> = {
  mend: 'care',
  do: 'work',
  'find out': 'look',
  retest: 'test',
  choose: 'leaf',
  fine: 'fine',
};

export interface Verdict {
  readonly need: Need;
  readonly text: string;
  /** When, if it is work with days to it. */
  readonly when?: string | undefined;
}

/** What to do with a place, in a line. */
export function verdictOf(planned: PlannedPlace, day: string, speaker: Speaker): Verdict {
  const need = needOf(planned, day);
  const { plan } = planned;
  if (plan === undefined) return { need, text: label('web.verdict-mend') };
  if (need === 'retest') return { need, text: label('web.verdict-retest') };
  switch (plan.decision) {
    case 'raise':
    case 'lower': {
      const next = nextApplication(plan);
      if (next === undefined) return { need, text: label('web.verdict-later') };
      const text = label(plan.decision === 'raise' ? 'web.verdict-raise' : 'web.verdict-lower', {
        amount: speaker.weight(next.mass),
        product: next.product.name,
      });
      return { need, text, when: days(next.earliest, next.latest) };
    }
    case 'find out first':
      return { need, text: label(plan.present === undefined ? 'web.verdict-no-test' : 'web.verdict-find-out') };
    case 'not practical':
      return { need, text: label('web.verdict-not-practical') };
    case 'grow something else':
      return { need, text: label('web.verdict-grow-else') };
    default:
      return { need, text: label('web.verdict-fine') };
  }
}

/** What the pH line shows of a plan; the arrow only where something is to be changed. */
export function marksOf(plan: NonNullable<PlannedPlace['plan']>): PhMarks {
  const { present, target, decision, applications } = plan;
  const moves = (decision === 'raise' || decision === 'lower') && applications.length > 0;
  const shared = target.conflicts.length === 0;
  return {
    present,
    // Plants that share no pH have no range together; an empty one draws no bracket.
    low: shared ? target.low : target.high,
    high: shared ? target.high : target.low,
    aim: moves ? target.aim : undefined,
  };
}

/** The same in figures: `pH 5.3, wants 6.0 to 6.8`. */
export function figuresOf(plan: NonNullable<PlannedPlace['plan']>, speaker: Speaker): string {
  const { present, target } = plan;
  const now = present === undefined ? undefined : speaker.ph(present.mean);
  if (target.conflicts.length > 0)
    return [...(now === undefined ? [] : [label('web.row-ph', { ph: now })]), label('web.row-no-wanted')].join(', ');
  const wanted = { low: speaker.ph(target.low), high: speaker.ph(target.high) };
  return now === undefined
    ? label('web.row-unknown-wanted', wanted)
    : label('web.row-ph-wanted', { ph: now, ...wanted });
}
