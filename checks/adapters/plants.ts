import { type PlantRangeRow, publishedRange } from '@sorrel/almanac/plant-ranges';
import { findPlant } from '@sorrel/almanac/plants';
import { fitWord, sharedRange } from '../../packages/engine/src/plan/plant-range.ts';
import { reactionClass } from '../../packages/engine/src/plan/reaction-class.ts';
import type { Adapter, CheckCase } from '../adapter.ts';

type Figures = Record<string, number | string | null>;

const MEDIA: readonly PlantRangeRow['medium'][] = ['soil', 'container', 'soil in KCl'];
const RANGE_KEYS = ['ph_low', 'ph_high', 'tol_low', 'tol_high'];

interface Range {
  readonly name: string;
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly toleratesLow: number | undefined;
  readonly toleratesHigh: number | undefined;
}

/** One publication's range when the case names one we hold, else the almanac's middle of all sources. */
function rangeOf(plant: string, source: unknown, medium: unknown): Range {
  const row = findPlant(plant);
  if (typeof source !== 'string') {
    if (row === undefined) throw new Error(`no plant is called ${plant}`);
    return row;
  }
  const media = MEDIA.filter((one) => medium === undefined || one === medium);
  for (const name of [plant, row?.name ?? plant])
    for (const one of media) {
      const published = publishedRange(name, source, one);
      if (published !== undefined) return published;
    }
  throw new Error(`${source} gives no range for ${plant}`);
}

/** Limits for the planner's functions; a source without a best range is read by what it says the plant stands. */
function limits(range: Range) {
  const low = range.low ?? range.toleratesLow;
  const high = range.high ?? range.toleratesHigh;
  if (low === undefined || high === undefined) throw new Error(`${range.name} has no full range in that source`);
  return {
    name: range.name,
    low,
    high,
    ...(range.toleratesLow === undefined ? {} : { toleratesLow: range.toleratesLow }),
    ...(range.toleratesHigh === undefined ? {} : { toleratesHigh: range.toleratesHigh }),
  };
}

const has = (check: CheckCase, ...keys: string[]) => keys.every((key) => key in check.inputs);
const expects = (check: CheckCase, ...keys: string[]) => keys.some((key) => key in check.expected);
const names = (value: unknown): value is string[] =>
  Array.isArray(value) && value.length > 0 && value.every((one) => typeof one === 'string');

export const plants: Adapter[] = [
  {
    name: 'soil reaction class',
    accepts: (check) =>
      typeof check.inputs.ph === 'number' &&
      Object.keys(check.inputs).length === 1 &&
      Object.keys(check.expected).join() === 'class',
    compute: (check) => ({ class: reactionClass(check.inputs.ph as number) }),
  },
  {
    name: 'plant pH range',
    accepts: (check) => typeof check.inputs.plant === 'string' && !has(check, 'ph') && expects(check, ...RANGE_KEYS),
    compute(check) {
      const { plant, source, medium } = check.inputs;
      const range = rangeOf(plant as string, source, medium);
      return {
        ph_low: range.low ?? null,
        ph_high: range.high ?? null,
        tol_low: range.toleratesLow ?? null,
        tol_high: range.toleratesHigh ?? null,
      } satisfies Figures;
    },
  },
  {
    name: 'fit of a pH to a plant',
    accepts: (check) =>
      typeof check.inputs.plant === 'string' && typeof check.inputs.ph === 'number' && expects(check, 'fit'),
    compute(check) {
      const { plant, ph, source, medium } = check.inputs;
      return { fit: fitWord(ph as number, limits(rangeOf(plant as string, source, medium))) };
    },
  },
  {
    name: 'pH that plants share',
    accepts: (check) => names(check.inputs.plants) && expects(check, 'low', 'high'),
    compute(check) {
      const { plants: list, source, medium } = check.inputs;
      const shared = sharedRange((list as string[]).map((plant) => limits(rangeOf(plant, source, medium))));
      const none = shared.conflicts.length > 0;
      return { low: none ? null : shared.low, high: none ? null : shared.high };
    },
  },
];
