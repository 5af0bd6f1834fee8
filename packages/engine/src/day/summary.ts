import { type PhClassRow, phClasses } from '@sorrel/almanac/ph-classes';
import { median } from 'simple-statistics';
import type { Message } from '../derivation/message.ts';
import type { Place } from '../plan/place.ts';
import type { Decision, Recommendation, ShoppingLine } from '../plan/recommendation.ts';
import { shoppingFor } from '../plan/shopping.ts';
import type { Ph } from '../units/si.ts';
import { callsFor } from './calls.ts';

/** One sample of the day with its plan. */
export interface PlannedSample {
  readonly code: string;
  readonly neighbourhood?: string;
  readonly place: Place;
  readonly plan: Recommendation;
}

export interface PhClassCount {
  readonly name: string;
  readonly count: number;
}

export interface Neighbourhood {
  /** Undefined for samples without one. */
  readonly name: string | undefined;
  readonly samples: number;
  readonly medianPh: Ph | undefined;
  readonly classes: readonly PhClassCount[];
}

export interface DaySummary {
  readonly samples: number;
  /** All samples together, in the classes of the soil survey. */
  readonly all: Neighbourhood;
  /** By name; one of its own for samples without a neighbourhood, last. */
  readonly neighbourhoods: readonly Neighbourhood[];
  readonly decisions: readonly { readonly decision: Decision; readonly count: number }[];
  /** Headlines of the plans, the commonest first. */
  readonly problems: readonly { readonly code: Message['code']; readonly count: number }[];
  /** What the first steps of everybody need together. */
  readonly shopping: readonly ShoppingLine[];
  readonly calls: readonly { readonly code: string; readonly why: readonly Message[] }[];
}

/**
 * What a day's soils look like together.
 *
 * @param samples each with its plan, in check-in order
 * @source pH classes: almanac `ph-classes` (ssm-classes); whom to call: `calls`
 */
export function summaryOf(samples: readonly PlannedSample[]): DaySummary {
  const names = [
    ...new Set(samples.flatMap(({ neighbourhood }) => (neighbourhood === undefined ? [] : [neighbourhood]))),
  ];
  names.sort((a, b) => a.localeCompare(b));
  const groups: (string | undefined)[] = [...names];
  if (samples.some(({ neighbourhood }) => neighbourhood === undefined)) groups.push(undefined);
  return {
    samples: samples.length,
    all: groupOf(undefined, samples),
    neighbourhoods: groups.map((name) =>
      groupOf(
        name,
        samples.filter(({ neighbourhood }) => neighbourhood === name),
      ),
    ),
    decisions: counted(samples.map(({ plan }) => plan.decision)).map(([decision, count]) => ({ decision, count })),
    problems: counted(samples.flatMap(({ plan }) => plan.reasons.slice(0, 1).map(({ code }) => code))).map(
      ([code, count]) => ({ code, count }),
    ),
    shopping: shoppingFor(samples.map(({ plan }) => plan)),
    calls: samples.flatMap((sample) => {
      const why = callsFor(sample);
      return why.length === 0 ? [] : [{ code: sample.code, why }];
    }),
  };
}

/** The commonest first; equals in order of appearance. */
function counted<T>(values: readonly T[]): (readonly [T, number])[] {
  const counts = new Map<T, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1]);
}

function groupOf(name: string | undefined, samples: readonly PlannedSample[]): Neighbourhood {
  const readings = samples.flatMap(({ plan }) => (plan.present === undefined ? [] : [plan.present.mean]));
  return {
    name,
    samples: samples.length,
    medianPh: readings.length === 0 ? undefined : median(readings),
    classes: phClasses.map((row) => ({ name: row.name, count: readings.filter((ph) => inClass(ph, row)).length })),
  };
}

/** Classes are printed to tenths, so a reading belongs where it rounds to. */
function inClass(ph: Ph, { low, high }: PhClassRow): boolean {
  const tenths = Math.round(ph * 10 + 1e-6);
  return (
    (low === undefined || tenths >= Math.round(low * 10)) && (high === undefined || tenths <= Math.round(high * 10))
  );
}
