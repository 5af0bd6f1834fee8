import type { Layer } from '../soil/soil.ts';
import type { Place } from './place.ts';

/**
 * The layer as it stands under a square metre. A plan works out pots for one cubic metre of mix, because doses are
 * weighed by volume; water, feeds and rain fall on the surface, so what runs through time needs the real depth.
 */
export function standingLayer(place: Pick<Place, 'kind' | 'depth'>, layer: Layer): Layer {
  if (place.kind !== 'container') return layer;
  return { ...layer, depth: place.depth, mass: (layer.mass / layer.depth) * place.depth };
}
