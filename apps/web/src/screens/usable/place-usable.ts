import { type PlaceNutrients, plannedNutrients } from '@sorrel/engine/nutrients';
import type { PlannedPlace } from '../../engine/garden-plan.ts';

/** What the pH of a place does to its nutrients, today and where the plan leads; undefined where no pH is known. */
export const placeUsable = ({ place, plan }: PlannedPlace): PlaceNutrients | undefined =>
  place === undefined || plan === undefined ? undefined : plannedNutrients(place, plan);
