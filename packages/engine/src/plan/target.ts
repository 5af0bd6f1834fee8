import type { Recorder } from '../derivation/derivation.ts';
import { type DiseaseTarget, diseaseTarget } from '../nutrients/disease-target.ts';
import type { Ph } from '../units/si.ts';
import type { Place, PlantRange } from './place.ts';
import { sharedRange } from './plant-range.ts';
import type { Target } from './recommendation.ts';

/** General vegetable ground, used when neither plants nor figures are given; said to be a default wherever shown. */
const GENERAL: Target = { low: 6.0, high: 7.0, aim: 6.5, conflicts: [], basis: 'default' };
/** Most crops in soilless media. */
const GENERAL_POT: Target = { low: 5.5, high: 6.5, aim: 6.0, conflicts: [], basis: 'default' };
const NONE: Target['conflicts'] = [];

/**
 * pH the place should have: the gardener's own figures, else the range all its plants share, else a general default.
 * With plants that share no pH the target spans the gap and `conflicts` names the pairs. A disease that is present may
 * move the plants' range, never figures of the gardener's own.
 *
 * @returns target on the scale of the place's tests (soil in water; media extract for soilless mixes)
 * @source plant ranges: almanac `plants`; general 6.0–7.0: njaes-ph and SORREL; soilless 5.5–6.5: MAHER_2008
 */
export function targetOf(place: Place, recorder?: Recorder): Target {
  const soilless = place.medium === 'soilless';
  const { plants } = place;
  let target: Target;
  if (place.target !== undefined) {
    const { low, high, aim } = place.target;
    target = { low, high, aim: aim ?? (low + high) / 2, conflicts: NONE, basis: 'own figures' };
  } else if (plants.length > 0) {
    const { low, high, conflicts } = sharedRange(soilless ? plants.map(potted) : plants);
    target = { low, high, aim: aimWithin(low, high, plants), conflicts, basis: 'plants' };
  } else target = soilless ? GENERAL_POT : GENERAL;
  // Limits of diseases are of soil; an extract of a mix reads another scale.
  if (place.diseases !== undefined && target.basis === 'plants' && !soilless)
    target = withDiseases(target, plants, diseaseTarget(plants, place.diseases), recorder);
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
      sources: sourcesOf(target, place, soilless),
      basis: plants.some((plant) => plant.basis === 'memory') ? 'memory' : 'derived',
      note:
        target.basis === 'default'
          ? 'No plants were named, so a general range was taken.'
          : plants.map((plant) => `${plant.name} ${plant.low}–${plant.high}`).join('; '),
    });
  return target;
}

/** Width of a range that a disease moved beyond what the plants call best; own rule. */
const DISEASE_WIDTH = 0.3;

function withDiseases(
  target: Target,
  plants: readonly PlantRange[],
  found: DiseaseTarget,
  recorder?: Recorder,
): Target {
  if (found.low === undefined && found.high === undefined) return target;
  let { low, high } = target;
  if (found.low !== undefined && low < found.low) {
    low = found.low;
    high = Math.max(high, low + DISEASE_WIDTH);
  }
  if (found.high !== undefined && high > found.high) {
    high = found.high;
    low = Math.max(found.low ?? 0, Math.min(low, high - DISEASE_WIDTH));
  }
  const moved = { ...target, low, high, aim: aimWithin(low, high, plants) };
  if (recorder)
    recorder.step({
      symbol: 'T',
      title: 'Target pH moved by diseases that are present',
      formula: 'low no lower, high no higher than the limits of the diseases',
      terms: found.limits.map((limit) => ({
        symbol: limit.disease,
        value: `${limit.side} ${limit.ph}`,
        unit: 'pH',
        origin: 'table' as const,
        source: limit.sources[0] ?? 'SORREL',
      })),
      value: moved.aim,
      unit: 'pH',
      sources: [...new Set(found.limits.flatMap((limit) => limit.sources))],
      basis: 'judgement',
      note: 'A pH helps against a disease on some ground and fails on other ground.',
    });
  return moved;
}

const potted = (plant: PlantRange): PlantRange =>
  plant.container === undefined ? plant : { ...plant, ...plant.container };

/** Mean of the plants' own aims, kept inside the shared range. */
function aimWithin(low: Ph, high: Ph, plants: readonly PlantRange[]): Ph {
  let sum = 0;
  for (const plant of plants) sum += plant.aim;
  const mean = sum / plants.length;
  return Math.min(Math.max(mean, Math.min(low, high)), Math.max(low, high));
}

function sourcesOf(target: Target, place: Place, soilless: boolean): readonly string[] {
  if (target.basis === 'default') return soilless ? ['MAHER_2008'] : ['njaes-ph', 'SORREL'];
  const cited = new Set(target.basis === 'plants' ? place.plants.flatMap((plant) => plant.sources) : []);
  return cited.size > 0 ? [...cited] : ['SORREL'];
}
