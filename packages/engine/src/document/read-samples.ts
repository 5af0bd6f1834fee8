import type { Place } from '../plan/place.ts';
import { sample } from './schema.ts';

/** A place that is somebody's bag of soil. */
export interface SampledPlace {
  readonly code: string;
  readonly person?: string;
  readonly neighbourhood?: string;
  readonly place: Place;
}

/**
 * Which of a garden's places are samples of a soil day, in the order of the document, which is that of check-in.
 *
 * @param document as it was given to `readGarden`
 * @param places what `readGarden` made of it: the ids say which entry each came from
 * @returns samples with a good code whose place could be read
 */
export function readSamples(document: unknown, places: readonly Place[]): readonly SampledPlace[] {
  const entries = listIn(document);
  return places.flatMap((place): SampledPlace[] => {
    const entry = entries[Number(place.id.replace('place-', '')) - 1];
    const typed = typeof entry === 'object' && entry !== null && 'sample' in entry ? entry.sample : undefined;
    const { success, data } = sample.safeParse(typed);
    if (!success) return [];
    const { code, person, neighbourhood } = data;
    return [
      {
        code,
        ...(person === undefined ? {} : { person }),
        ...(neighbourhood === undefined ? {} : { neighbourhood }),
        place,
      },
    ];
  });
}

const listIn = (document: unknown): readonly unknown[] =>
  typeof document === 'object' && document !== null && 'places' in document && Array.isArray(document.places)
    ? document.places
    : [];
