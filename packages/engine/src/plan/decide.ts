import type { Message } from '../derivation/message.ts';
import type { FreeLime } from '../soil/free-lime.ts';
import type { PhEstimate } from '../soil/soil.ts';
import type { Place, PlantRange } from './place.ts';
import type { Decision, Target } from './recommendation.ts';

/** What the decision looks at. pH on the scale of the target. */
export interface Facts {
  readonly place: Place;
  readonly target: Target;
  readonly present: PhEstimate | undefined;
  /** False when the only pH comes from an instrument that must not set a dose. */
  readonly mayDose: boolean;
  /** What is known of free lime; undefined for pots, whose mixes are not limy ground. */
  readonly freeLime: FreeLime | undefined;
  /** Total lead, kg/kg, highest reported. */
  readonly lead: number | undefined;
  /** Whether the evidence gives a buffer curve, so that a rate can be worked out. */
  readonly hasCurve: boolean;
}

export interface Verdict {
  readonly decision: Decision;
  readonly reasons: readonly Message[];
}

/** Below this the reading is so odd that a professional should look before anything is spread (safety: refer out below 4). */
export const EXTREME_LOW = 3.5;
/** Lead from which acidifying is refused: the cautious 2024 multi-source level (EPA_2024). */
export const LEAD_BLOCKS_ACID = 100e-6;

const say = (code: Message['code'], facts: Facts): Message => ({
  code,
  parameters: {
    ph: { value: facts.present?.mean ?? Number.NaN, dimension: 'ph' },
    low: { value: facts.target.low, dimension: 'ph' },
    high: { value: facts.target.high, dimension: 'ph' },
    aim: { value: facts.target.aim, dimension: 'ph' },
  },
});

/**
 * What to do with a place: leave it alone, raise, lower, or say why not. Safe answers come before doses.
 *
 * @returns decision and reasons, the headline first
 * @source practice.md sections 1, 4 and 10 (duty of care); acidification.md sections 2 and 4; rules marked SORREL in `docs/model.md`
 */
export function decide(facts: Facts): Verdict {
  const { present, target } = facts;
  if (present === undefined) return { decision: 'find out first', reasons: [{ code: 'plan.no-ph' }] };
  const conflict = target.conflicts[0];
  if (conflict !== undefined)
    return {
      decision: 'grow something else',
      reasons: [
        { code: 'plan.conflict', parameters: { a: conflict.a, b: conflict.b } },
        say('plan.conflict-split', facts),
      ],
    };
  const ph = present.mean;
  if (ph >= target.low && ph <= target.high) return { decision: 'leave alone', reasons: [say('plan.in-range', facts)] };
  if (ph < EXTREME_LOW) return { decision: 'find out first', reasons: [say('plan.extreme-low', facts)] };
  const below = ph < target.low;
  const gap = below ? target.low - ph : ph - target.high;
  // A refusal needs no exact pH, so it comes before the question whether the reading is good enough for a dose.
  const refusal = below ? undefined : refuseToLower(facts, gap);
  if (refusal !== undefined) return refusal;
  if (!facts.mayDose)
    return {
      decision: 'find out first',
      reasons: [say(below ? 'plan.home-reading-sour' : 'plan.home-reading-limy', facts), { code: 'plan.home-no-dose' }],
    };
  if (gap < present.sd) return { decision: 'leave alone', reasons: [say('plan.within-error', facts)] };
  if (!facts.hasCurve)
    return {
      decision: 'find out first',
      reasons: [say(below ? 'plan.sour-no-rate' : 'plan.limy-no-rate', facts), { code: 'plan.ph-alone' }],
    };
  return below
    ? { decision: 'raise', reasons: [say('plan.raise', facts)] }
    : { decision: 'lower', reasons: [say('plan.lower', facts)] };
}

/** Why this soil is not made sourer, or undefined when nothing speaks against it. */
function refuseToLower(facts: Facts, gap: number): Verdict | undefined {
  const { freeLime, place } = facts;
  const ph = facts.present?.mean ?? 0;
  const acidLovers = place.plants.filter((plant) => plant.reaction === 'acid-loving');
  const cannot = (reason: Message): Verdict =>
    acidLovers.length > 0 && acidLovers.length === place.plants.length
      ? { decision: 'grow something else', reasons: [reason, say('plan.acid-lovers-in-pots', facts)] }
      : { decision: 'not practical', reasons: [reason, say('plan.live-with-it', facts)] };
  if (facts.lead !== undefined && facts.lead >= LEAD_BLOCKS_ACID)
    return { decision: 'not practical', reasons: [say('plan.lead-blocks-acid', facts)] };
  if (freeLime?.sodiumSuspected) return { decision: 'not practical', reasons: [say('plan.sodium', facts)] };
  const tolerated =
    place.plants.length > 0 && acidLovers.length === 0 && place.plants.every((plant) => bears(plant, ph));
  if (tolerated && facts.mayDose && gap >= (facts.present?.sd ?? 0))
    return { decision: 'leave alone', reasons: [say('plan.tolerated-limy', facts)] };
  if (tolerated) return undefined;
  if (freeLime?.class === 'small beds only' || freeLime?.class === 'do not acidify in ground')
    return cannot(say('plan.free-lime', facts));
  if (freeLime?.class === 'test first') return { decision: 'find out first', reasons: [say('plan.fizz-first', facts)] };
  return undefined;
}

/** A plant bears a pH above its best range up to its published limit, or half a unit when nobody published one. */
const bears = (plant: PlantRange, ph: number): boolean =>
  ph <= (plant.toleratesHigh === undefined ? plant.high + 0.5 : Math.min(plant.toleratesHigh, plant.high + 1));

/** A soil that would need more yearly dressings than this is called impractical (judgement, SORREL). */
export const MOST_DRESSINGS = 6;
