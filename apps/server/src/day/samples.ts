import { createHash } from 'node:crypto';
import { type ReadGarden, readGarden } from '@sorrel/engine/document';
import type { Place } from '@sorrel/engine/plan';
import type { SampleToPlan, Store } from '@sorrel/store';
import { Refusal } from '../http/problem-details.ts';
import { orRefuse } from '../http/store-refusals.ts';
import { words } from '../words.ts';

/** A sample of the record. */
export interface Sample extends SampleToPlan {
  readonly person?: string | undefined;
  readonly neighbourhood?: string | undefined;
  /** Name of its place. */
  readonly name: string;
  /** Undefined when the reader could make nothing of it. */
  readonly read: Place | undefined;
  /** Why not. */
  readonly wrong: string;
}

export interface DayInRecord {
  readonly read: ReadGarden;
  /** In check-in order. */
  readonly samples: readonly Sample[];
}

/** Written into each hash: another number has every sample planned anew after the planner has changed. */
const PLANNER = 1;

/**
 * The soil day as the record has it now.
 *
 * @param asOf the day planned for
 * @throws Refusal when there is no such garden or it is no soil day
 */
export async function samplesOf(store: Store, garden: string, asOf: string): Promise<DayInRecord> {
  const { document, from } = orRefuse(await store.assemble(garden));
  if (document.soilDay === undefined) throw new Refusal('not-found', words.noDay);
  const read = readGarden(document, { today: asOf, asOf });
  // The reader numbers places as the document has them, from 1, and leaves out those it cannot use.
  const places = new Map(read.garden.places.map((place) => [place.id, place]));
  const { places: _, garden: __, note: ___, ...head } = document;
  const shared = JSON.stringify([PLANNER, asOf, head]);
  const samples = document.places.flatMap((entry, index): Sample[] => {
    const place = from.places[index]?.id;
    if (entry.sample === undefined || place === undefined) return [];
    const { sample, name, note, ...figures } = entry;
    const found = places.get(`place-${index + 1}`);
    return [
      {
        ...sample,
        place,
        name,
        source: hashOf(shared + JSON.stringify(figures)),
        read: found === undefined ? undefined : { ...found, id: place },
        wrong: wrongIn(read, name),
      },
    ];
  });
  return { read, samples };
}

const hashOf = (text: string): string => createHash('sha256').update(text).digest('hex');

const wrongIn = ({ problems }: ReadGarden, name: string): string =>
  problems
    .filter(({ place }) => place === name)
    .map(({ message, fix }) => `${message} ${fix}`)
    .join(' ') || words.unreadSample;
