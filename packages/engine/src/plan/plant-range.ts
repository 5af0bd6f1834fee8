import type { HalfKnownPlantRow } from '@sorrel/almanac/half-known-plants';
import type { PlantRow } from '@sorrel/almanac/plants';
import type { Recorder } from '../derivation/derivation.ts';
import type { Message } from '../derivation/message.ts';
import type { Ph } from '../units/si.ts';
import type { PlantRange } from './place.ts';

/** What a plant is taken to stand beyond its best range when no source says, pH units (own rule, said wherever used). */
export const ASSUMED_TOLERANCE = 1.0;
/** Fit at the published limit of tolerance (own rule). */
const FIT_AT_LIMIT = 0.3;

/** The range of an almanac plant as the planner reads it; limits nobody published stay undefined. */
export function plantRangeOf(row: PlantRow): PlantRange {
  let range = ranges.get(row);
  if (range === undefined) {
    range = rangeOf(row);
    ranges.set(row, range);
  }
  return range;
}

/** One range a row of the almanac, shared by every place that grows it. */
const ranges = new WeakMap<PlantRow, PlantRange>();

function rangeOf(row: PlantRow): PlantRange {
  return {
    key: row.key,
    name: row.name,
    low: row.low,
    high: row.high,
    ...(row.toleratesLow === undefined ? {} : { toleratesLow: row.toleratesLow }),
    ...(row.toleratesHigh === undefined ? {} : { toleratesHigh: row.toleratesHigh }),
    aim: row.aim,
    reaction: row.reaction,
    ...(row.containerLow === undefined || row.containerHigh === undefined
      ? {}
      : { container: { low: row.containerLow, high: row.containerHigh } }),
    sources: row.sources,
    basis: row.basis,
  };
}

/**
 * The range of a plant of which only a range for pots is published, for potting mixes and nothing else.
 *
 * @returns undefined when no range for pots is published either
 */
export function potRangeOf(row: HalfKnownPlantRow): PlantRange | undefined {
  const { containerLow: low, containerHigh: high } = row;
  if (low === undefined || high === undefined) return undefined;
  return {
    key: row.key,
    name: row.name,
    low,
    high,
    aim: (low + high) / 2,
    reaction: 'neutral',
    container: { low, high },
    sources: row.sources,
    basis: row.basis,
  };
}

/** What a reader must be told of a plant's figures: from memory, assumed limits, sources far apart. */
export function plantNotes(row: PlantRow): readonly Message[] {
  const notes: Message[] = [];
  const plant = row.name;
  if (row.basis === 'memory') notes.push({ code: 'plan.plant-memory', parameters: { plant } });
  const spread = Math.max(row.lowSpread, row.highSpread);
  if (spread >= 1)
    notes.push({ code: 'plan.plant-sources-differ', parameters: { plant, count: row.sourceCount, spread } });
  if (row.toleratesLow === undefined || row.toleratesHigh === undefined)
    notes.push({ code: 'plan.plant-limits-assumed', parameters: { plant } });
  return notes;
}

type Limits = Pick<PlantRange, 'low' | 'high' | 'toleratesLow' | 'toleratesHigh'>;

/** Lowest and highest pH the plant stands; one unit beyond its best range where no source says. */
export const limitsOf = (range: Limits): { readonly low: Ph; readonly high: Ph } => ({
  low: Math.min(range.low, range.toleratesLow ?? range.low - ASSUMED_TOLERANCE),
  high: Math.max(range.high, range.toleratesHigh ?? range.high + ASSUMED_TOLERANCE),
});

/**
 * How well a pH suits a plant: 1 inside its best range, falling straight to 0.3 at the limit it stands, 0 beyond.
 *
 * @param ph on the scale of the range (soil in water, or media extract for a container range)
 * @returns 0 to 1; for ordering and shading, never shown as a yield
 * @source own rule (SORREL); ranges from the almanac's `plants`
 */
export function fit(ph: Ph, range: Limits, recorder?: Recorder): number {
  const limit = limitsOf(range);
  let value: number;
  if (ph >= range.low && ph <= range.high) value = 1;
  else if (ph < limit.low || ph > limit.high) value = 0;
  else {
    const [best, edge] = ph < range.low ? [range.low, limit.low] : [range.high, limit.high];
    value = 1 - ((1 - FIT_AT_LIMIT) * (ph - best)) / (edge - best);
  }
  if (recorder)
    recorder.step({
      symbol: 'fit',
      title: 'How well the pH suits the plant',
      formula: '1 inside low to high; straight to 0.3 at the limit; 0 beyond',
      terms: [
        { symbol: 'pH', value: ph, unit: 'pH', origin: 'entered' },
        { symbol: 'low', value: range.low, unit: 'pH', origin: 'choice' },
        { symbol: 'high', value: range.high, unit: 'pH', origin: 'choice' },
        { symbol: 'limit low', value: limit.low, unit: 'pH', origin: 'choice' },
        { symbol: 'limit high', value: limit.high, unit: 'pH', origin: 'choice' },
      ],
      value,
      unit: '1',
      sources: ['SORREL'],
      basis: 'judgement',
      ...(range.toleratesLow === undefined || range.toleratesHigh === undefined
        ? { note: 'Where no source gives a limit, one pH unit beyond the best range is taken.' }
        : {}),
    });
  return value;
}

export type FitWord =
  | 'inside optimum'
  | 'below optimum, inside limits'
  | 'above optimum, inside limits'
  | 'too acid'
  | 'too alkaline';

/** The same as a word. */
export function fitWord(ph: Ph, range: Limits): FitWord {
  const limit = limitsOf(range);
  if (ph < limit.low) return 'too acid';
  if (ph > limit.high) return 'too alkaline';
  if (ph < range.low) return 'below optimum, inside limits';
  return ph > range.high ? 'above optimum, inside limits' : 'inside optimum';
}

export interface SharedRange {
  readonly low: Ph;
  readonly high: Ph;
  /** Pairs of plants whose best ranges share no pH; when there are any, `low` lies above `high`. */
  readonly conflicts: readonly { readonly a: string; readonly b: string }[];
}

/**
 * The pH all plants of a mixed bed call best: the largest of their lows to the smallest of their highs.
 *
 * @throws RangeError for an empty list
 * @source intersection of ranges, own rule (SORREL)
 */
export function sharedRange(plants: readonly Pick<PlantRange, 'name' | 'low' | 'high'>[]): SharedRange {
  if (plants.length === 0) throw new RangeError('sharedRange needs at least one plant');
  let low = Number.NEGATIVE_INFINITY;
  let high = Number.POSITIVE_INFINITY;
  for (const plant of plants) {
    low = Math.max(low, plant.low);
    high = Math.min(high, plant.high);
  }
  const conflicts: { a: string; b: string }[] = [];
  // On a line, ranges have no point in common exactly when two of them lie apart.
  if (low > high)
    plants.forEach((a, index) => {
      for (const b of plants.slice(index + 1))
        if (a.low > b.high || b.low > a.high) conflicts.push({ a: a.name, b: b.name });
    });
  return { low, high, conflicts };
}
