import type { Recorder } from '../derivation/derivation.ts';
import type { Place } from './place.ts';
import { sharedRange } from './plant-range.ts';
import type { Target } from './recommendation.ts';

/** General vegetable ground, used when neither plants nor figures are given; said to be a default wherever shown. */
const GENERAL = { low: 6.0, high: 7.0, aim: 6.5 } as const;
/** Most crops in soilless media. */
const GENERAL_POT = { low: 5.5, high: 6.5, aim: 6.0 } as const;

/**
 * pH the place should have: the gardener's own figures, else the range all its plants share, else a general default.
 * With plants that share no pH the target spans the gap and `conflicts` names the pairs.
 *
 * @returns target on the scale of the place's tests (soil in water; media extract for soilless mixes)
 * @source plant ranges: almanac `plants`; general 6.0–7.0: njaes-ph and SORREL; soilless 5.5–6.5: MAHER_2008
 */
export function targetOf(place: Place, recorder?: Recorder): Target {
  const soilless = place.medium === 'soilless';
  let target: Target;
  let sources: string[];
  if (place.target !== undefined) {
    const { low, high } = place.target;
    target = { low, high, aim: place.target.aim ?? (low + high) / 2, conflicts: [], basis: 'own figures' };
    sources = ['SORREL'];
  } else if (place.plants.length > 0) {
    const shared = sharedRange(
      soilless
        ? place.plants.map((plant) => (plant.container ? { ...plant, ...plant.container } : plant))
        : place.plants,
    );
    target = { ...shared, aim: aimWithin(shared.low, shared.high, place), basis: 'plants' };
    sources = [...new Set(place.plants.flatMap((plant) => plant.sources))];
  } else {
    target = { ...(soilless ? GENERAL_POT : GENERAL), conflicts: [], basis: 'default' };
    sources = soilless ? ['MAHER_2008'] : ['njaes-ph', 'SORREL'];
  }
  if (recorder)
    recorder.step({
      symbol: 'T',
      title: 'Target pH',
      formula: 'low = largest of the plants’ lows; high = smallest of their highs; T inside, between the plants’ aims',
      terms: [
        { symbol: 'low', value: target.low, unit: 'pH', origin: target.basis === 'own figures' ? 'entered' : 'choice' },
        {
          symbol: 'high',
          value: target.high,
          unit: 'pH',
          origin: target.basis === 'own figures' ? 'entered' : 'choice',
        },
      ],
      value: target.aim,
      unit: 'pH',
      sources: sources.length > 0 ? sources : ['SORREL'],
      basis: place.plants.some((plant) => plant.basis === 'memory') ? 'memory' : 'derived',
      note:
        target.basis === 'default'
          ? 'No plants were named, so a general range was taken.'
          : place.plants.map((plant) => `${plant.name} ${plant.low}–${plant.high}`).join('; '),
    });
  return target;
}

/** Mean of the plants' own aims, kept inside the shared range. */
function aimWithin(low: number, high: number, place: Place): number {
  let sum = 0;
  for (const plant of place.plants) sum += plant.aim;
  const mean = sum / place.plants.length;
  return Math.min(Math.max(mean, Math.min(low, high)), Math.max(low, high));
}
