import type { SymptomEvidence } from '@sorrel/engine/nutrients';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { placeUsable } from '../usable/place-usable.ts';

/** What a place itself tells about a sick plant in it: its medium, its pH and the verdicts on its latest test. */
export function evidenceOf(planned: PlannedPlace, plant: string): SymptomEvidence {
  const { place, plan } = planned;
  const usable = placeUsable(planned);
  return {
    ...(plant.trim() === '' ? {} : { crop: plant.trim() }),
    ...(place === undefined ? {} : { medium: place.medium }),
    ...(plan?.present === undefined ? {} : { ph: plan.present.mean }),
    ...(usable === undefined ? {} : { verdicts: usable.verdicts }),
  };
}
