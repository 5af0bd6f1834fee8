import type { Place, PlantRange } from '../plan/place.ts';
import { targetOf } from '../plan/target.ts';
import type { Ph } from '../units/si.ts';

export interface Range {
  readonly low: Ph;
  readonly high: Ph;
}

/**
 * The pH one plant wants in one place: its container range in a potting mix, moved by diseases that are present there.
 * Figures of the gardener's own for the place are not looked at.
 *
 * @source ranges: almanac `plants`; diseases as in `targetOf`
 */
export function rangeIn(place: Place, plant: PlantRange): Range {
  if (place.diseases === undefined)
    return place.medium === 'soilless' && plant.container !== undefined ? plant.container : plant;
  const { target: _own, ...rest } = place;
  return targetOf({ ...rest, plants: [plant] });
}
