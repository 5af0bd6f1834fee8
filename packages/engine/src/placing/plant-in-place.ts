import type { HalfKnownPlantRow } from '@sorrel/almanac/half-known-plants';
import type { PlantRow } from '@sorrel/almanac/plants';
import type { Message } from '../derivation/message.ts';
import { diseaseTarget } from '../nutrients/disease-target.ts';
import type { Place, PlantRange } from '../plan/place.ts';
import { type FitWord, fitWord, plantRangeOf, potRangeOf } from '../plan/plant-range.ts';
import type { Recommendation } from '../plan/recommendation.ts';
import type { Ph } from '../units/si.ts';
import { type Range, rangeIn } from './ranges.ts';

/** How a plant and a place go together, the best first. */
export const PLACE_VERDICTS = ['suits', 'suits after the plan', 'stands it', 'does not suit', 'not known'] as const;
export type PlaceVerdict = (typeof PLACE_VERDICTS)[number];

export interface PlantInPlace {
  readonly place: string;
  readonly verdict: PlaceVerdict;
  /** What it wants there: the range of pots in a potting mix, moved by diseases that are present. */
  readonly range?: Range;
  readonly today?: { readonly ph: Ph; readonly word: FitWord };
  /** Only when the plan of the place would move the pH. */
  readonly planned?: { readonly ph: Ph; readonly word: FitWord };
  /** It grows there already. */
  readonly there: boolean;
  /** Plants of the place that share no pH with it. */
  readonly apart: readonly string[];
  readonly reasons: readonly Message[];
}

type AnyPlant = PlantRow | HalfKnownPlantRow;
const isHalfKnown = (plant: AnyPlant): plant is HalfKnownPlantRow => !('aim' in plant);

/** The range a plant is planned by in a medium; undefined when none is published for it. */
export const rangeFor = (plant: AnyPlant, medium: Place['medium']): PlantRange | undefined =>
  isHalfKnown(plant) ? (medium === 'soilless' ? potRangeOf(plant) : undefined) : plantRangeOf(plant);

/**
 * Whether a plant suits a place by its pH: today, and at the pH the plan of the place leads to, with the reason when not.
 * Light, room and rotation are not looked at; `arrange` looks at those.
 *
 * @param plan of the place, with its present pH and its target
 * @source ranges: almanac `plants` and `half-known-plants`; verdict: own rule (SORREL)
 */
export function plantInPlace(plant: AnyPlant, place: Place, plan: Recommendation): PlantInPlace {
  const there = place.plants.some(({ key }) => key === plant.key);
  const wanted = rangeFor(plant, place.medium);
  if (wanted === undefined) {
    const why: Message = { code: noRange(plant), parameters: { plant: plant.name } };
    return { place: place.id, verdict: 'not known', there, apart: [], reasons: [why] };
  }
  const range = rangeIn(place, wanted);
  const apart = place.plants.filter((other) => other.key !== plant.key && clash(range, rangeIn(place, other)));
  const reasons: Message[] = [];
  if (place.medium === 'soilless' && wanted.container === undefined)
    reasons.push({ code: 'placing.no-pot-range', parameters: { plant: plant.name } });
  if (place.diseases !== undefined && place.medium !== 'soilless')
    reasons.push(...diseaseTarget([wanted], place.diseases).messages.filter(({ code }) => !IRRELEVANT.has(code)));
  const rest = { place: place.id, range, there, apart: apart.map(({ name }) => name) };
  const { present } = plan;
  if (present === undefined)
    return { ...rest, verdict: 'not known', reasons: [...reasons, { code: 'placing.plant-untested' }] };
  const limits = { ...wanted, ...range };
  const today = { ph: present.mean, word: fitWord(present.mean, limits) };
  const moves = plan.applications.length > 0;
  const planned = moves ? { ph: plan.target.aim, word: fitWord(plan.target.aim, limits) } : undefined;
  const after = planned?.word ?? today.word;
  const verdict: PlaceVerdict =
    after === 'inside optimum'
      ? today.word === 'inside optimum'
        ? 'suits'
        : 'suits after the plan'
      : stands(after)
        ? 'stands it'
        : 'does not suit';
  const ends = { low: { value: range.low, dimension: 'ph' }, high: { value: range.high, dimension: 'ph' } } as const;
  if (verdict !== 'suits') {
    const ph = { value: today.ph, dimension: 'ph' } as const;
    reasons.push({ code: `placing.plant-${SAID[today.word]}`, parameters: { plant: plant.name, ph, ...ends } });
    const gap = Math.max(range.low - today.ph, today.ph - range.high, 0);
    if (gap > 0 && gap < present.sd) reasons.push({ code: 'placing.plant-within-error' });
  }
  if (planned !== undefined && planned.word !== today.word)
    reasons.push({
      code: `placing.planned-${SAID[planned.word]}`,
      parameters: { ph: { value: planned.ph, dimension: 'ph' }, ...ends },
    });
  else if (planned !== undefined && verdict !== 'suits')
    reasons.push({ code: 'placing.planned-no-better', parameters: { ph: { value: planned.ph, dimension: 'ph' } } });
  for (const other of apart) reasons.push(apartSaid(plant.name, range, other.name, rangeIn(place, other)));
  return { ...rest, verdict, today, ...(planned === undefined ? {} : { planned }), reasons };
}

/** Of other plants, those that share no pH with this one on the ground's scale, the widest gap first. */
export function plantsApart(plant: PlantRange, others: readonly PlantRange[]): readonly PlantRange[] {
  const gap = (other: PlantRange) => Math.max(other.low - plant.high, plant.low - other.high);
  const seen = new Set<string>([plant.key]);
  return others
    .filter((other) => !seen.has(other.key) && seen.add(other.key) && gap(other) > 0)
    .sort((a, b) => gap(b) - gap(a));
}

/** The sentence that keeps two plants apart. */
export function apartSaid(a: string, rangeA: Range, b: string, rangeB: Range): Message {
  const [low, lowRange, high, highRange] = rangeA.low > rangeB.high ? [b, rangeB, a, rangeA] : [a, rangeA, b, rangeB];
  return {
    code: 'placing.apart',
    parameters: {
      a: low,
      b: high,
      high: { value: lowRange.high, dimension: 'ph' },
      low: { value: highRange.low, dimension: 'ph' },
    },
  };
}

/** Said of a whole bed; of one plant that does not catch a disease there is nothing to say. */
const IRRELEVANT: ReadonlySet<Message['code']> = new Set(['nutrients.disease-unknown', 'nutrients.disease-no-host']);

const SAID = {
  'inside optimum': 'inside',
  'below optimum, inside limits': 'below',
  'above optimum, inside limits': 'above',
  'too acid': 'too-sour',
  'too alkaline': 'too-limy',
} as const satisfies Readonly<Record<FitWord, string>>;

const stands = (word: FitWord): boolean => word !== 'too acid' && word !== 'too alkaline';
const clash = (a: Range, b: Range): boolean => a.low > b.high || b.low > a.high;

const noRange = (plant: AnyPlant): Message['code'] =>
  isHalfKnown(plant) && plant.containerLow !== undefined ? 'placing.only-pots-known' : 'placing.no-best-known';
