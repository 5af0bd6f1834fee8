import { fromSi, unitOf, weighable } from '@sorrel/engine/units';
import { decisionOf } from '../content/decision-words.ts';
import { dosesOf } from '../content/doses.ts';
import { type Cell, csvText } from '../csv.ts';
import { speakerFor } from '../speaker.ts';
import type { DayOptions, DaySample } from './day-sample.ts';

const columns = [
  'code',
  'person',
  'neighbourhood',
  'place',
  'ph',
  'wanted_low',
  'wanted_high',
  'decision',
  'headline',
  'material',
  'mass',
  'mass_unit',
  'weigh_out',
  'scoop',
  'earliest',
  'latest',
  'later_steps',
  'cautions',
  'retest_from',
  'retest_to',
] as const;

const tenth = (ph: number): number => Math.round(ph * 10) / 10;

/**
 * A row for each sample in check-in order, for letters and mails: CSV (RFC 4180), figures as plain numbers with the unit
 * beside them, dates in ISO 8601, and the sentences of the page. The dose is that of the first step, the only one that
 * may be spread without a retest; every caution goes with it.
 */
export function mergeTable(samples: readonly DaySample[], options: DayOptions): string {
  const speaker = speakerFor(options);
  const mass = unitOf(options.system === 'us' ? 'lb' : 'kg');
  const rows = samples.map(({ code, person, neighbourhood, place, plan }): Cell[] => {
    const first = plan.applications.find(({ onlyIfRetest }) => !onlyIfRetest);
    const dose = first === undefined ? undefined : dosesOf(plan, speaker)[plan.applications.indexOf(first)];
    const shared = plan.target.conflicts.length === 0;
    return [
      code,
      person,
      neighbourhood,
      place.name,
      plan.present === undefined ? undefined : tenth(plan.present.mean),
      shared ? tenth(plan.target.low) : undefined,
      shared ? tenth(plan.target.high) : undefined,
      decisionOf(plan.decision, speaker),
      plan.reasons.slice(0, 1).map(speaker.say).join(''),
      first?.product.name,
      first === undefined
        ? undefined
        : Number(fromSi(weighable(first.mass, options.system, 'down'), mass).toPrecision(4)),
      first === undefined ? undefined : mass.symbol,
      dose?.weigh,
      dose?.scoop,
      first?.earliest,
      first?.latest,
      plan.applications.filter(({ onlyIfRetest }) => onlyIfRetest).length,
      plan.cautions.map(speaker.say).join(' '),
      plan.retest?.earliest,
      plan.retest?.latest,
    ];
  });
  return csvText(columns, rows);
}
