import { type PlaceNutrients, placeNutrients } from '@sorrel/engine/nutrients';
import type { PlannedPlace } from '../../engine/garden-plan.ts';

/** What the pH of a place does to its nutrients, today and where the plan leads; undefined where no pH is known. */
export function placeUsable({ place, plan }: PlannedPlace): PlaceNutrients | undefined {
  if (place === undefined || plan?.present === undefined) return undefined;
  return placeNutrients(place, plan.present.mean, plan.applications.length > 0 ? plan.target.aim : undefined);
}
