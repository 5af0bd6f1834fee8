import { label } from '../../words/label.ts';
import { type AnyPlant, isHalfKnown } from '../edit-place/plant-search.ts';

const one = (ph: number): string => ph.toFixed(1);

/** What a plant wants, in a few words; a range that is no target says what it is. */
export function rangeText(plant: AnyPlant): string {
  if (!isHalfKnown(plant)) return label('web.plants-range', { low: one(plant.low), high: one(plant.high) });
  const { containerLow, containerHigh, foundLow, foundHigh } = plant;
  if (containerLow !== undefined && containerHigh !== undefined)
    return label('web.plants-range-pots', { low: one(containerLow), high: one(containerHigh) });
  if (foundLow !== undefined && foundHigh !== undefined)
    return label('web.plants-range-found', { low: one(foundLow), high: one(foundHigh) });
  return label('web.plants-range-up-to', { high: one(foundHigh ?? foundLow ?? 0) });
}

/** The range that is drawn for a plant: the ground, else pots, else where it is found. */
export function drawnRange(plant: AnyPlant): { readonly low?: number; readonly high?: number; readonly best: boolean } {
  if (!isHalfKnown(plant)) return { low: plant.low, high: plant.high, best: true };
  const { containerLow, containerHigh, foundLow, foundHigh } = plant;
  const [low, high] = containerLow === undefined ? [foundLow, foundHigh] : [containerLow, containerHigh];
  return {
    ...(low === undefined ? {} : { low }),
    ...(high === undefined ? {} : { high }),
    best: containerLow !== undefined,
  };
}
