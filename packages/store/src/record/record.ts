import type { Kind } from '../entry/entry.ts';
import { type Numbered, stands, type Thing, type ThingOf, thingsOf } from './things.ts';

/** The record of one garden as far as it has been read: its entries, and on demand what they come to. */
export interface GardenRecord {
  readonly garden: string;
  readonly entries: readonly Numbered[];
  readonly byId: ReadonlyMap<string, Numbered>;
  /** Number of the newest entry; 0 when there is none. */
  readonly version: number;
  /** All things, removed ones included. */
  all(): ReadonlyMap<string, Thing>;
  /** Things that stand, in the order in which they were added. */
  standing(): readonly Thing[];
}

export const emptyRecord = (garden: string): GardenRecord => recordFrom(garden, [], new Map());

/**
 * The record with more entries at its end; entries it already has are passed over. The list and the index are shared
 * and grow in place.
 */
export function withEntries(record: GardenRecord, more: readonly Numbered[]): GardenRecord {
  const entries = record.entries as Numbered[];
  const byId = record.byId as Map<string, Numbered>;
  for (const each of more) {
    if (each.number !== entries.length + 1) continue;
    entries.push(each);
    byId.set(each.entry.id, each);
  }
  return entries.length === record.version ? record : recordFrom(record.garden, entries, byId);
}

function recordFrom(garden: string, entries: readonly Numbered[], byId: ReadonlyMap<string, Numbered>): GardenRecord {
  const version = entries.at(-1)?.number ?? 0;
  let things: ReadonlyMap<string, Thing> | undefined;
  let standing: readonly Thing[] | undefined;
  const all = () => {
    things ??= thingsOf(entries.slice(0, version));
    return things;
  };
  return {
    garden,
    entries,
    byId,
    version,
    all,
    standing() {
      standing ??= [...all().values()].filter((thing) => stands(thing, all()));
      return standing;
    },
  };
}

/** The things of one kind, and of one place when one is named. */
export function thingsOfKind<K extends Kind>(things: readonly Thing[], kind: K, place?: string): readonly ThingOf<K>[] {
  return things.filter(
    (thing): thing is Thing & ThingOf<K> => thing.kind === kind && (place === undefined || thing.place === place),
  );
}
