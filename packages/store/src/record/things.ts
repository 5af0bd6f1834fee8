import type { Content, Entry, Kind } from '../entry/entry.ts';

/** An entry with its number in the garden's record; numbers run from 1 in the order of arrival. */
export interface Numbered {
  readonly number: number;
  readonly entry: Entry;
}

/** A thing of the garden as it stands now: what its first entry said, with all corrections. */
export type Thing = { readonly [K in Kind]: ThingOf<K> }[Kind];

export interface ThingOf<K extends Kind> {
  /** Id of the entry that added it. */
  readonly id: string;
  readonly kind: K;
  /** The place where it happened. */
  readonly place?: string;
  readonly content: Content<K>;
  /** Who wrote the version that stands, when, and the id of that entry: send it as `seen` with a correction. */
  readonly by: string;
  readonly at: string;
  readonly latest: string;
  /** Number of the entry that added it. */
  readonly number: number;
  /** How many corrections it has had. */
  readonly corrections: number;
  readonly removed: boolean;
}

/**
 * Ids of the entries that have been taken back. An undo that was itself taken back counts for nothing; it always comes
 * after what it takes back, so one pass from the end finds them all.
 */
export function takenBack(entries: readonly Numbered[]): ReadonlySet<string> {
  const gone = new Set<string>();
  for (let index = entries.length - 1; index >= 0; index--) {
    const entry = entries[index]?.entry;
    if (entry?.action === 'undo' && !gone.has(entry.id)) gone.add(entry.entry);
  }
  return gone;
}

/**
 * Replays a record: every thing that was added and not taken back, removed ones included and marked, in the order in
 * which they were added. The last correction to arrive stands; a removed thing stays removed until that is taken back.
 */
export function thingsOf(entries: readonly Numbered[]): ReadonlyMap<string, Thing> {
  const gone = takenBack(entries);
  const things = new Map<string, Thing>();
  for (const { number, entry } of entries) {
    if (gone.has(entry.id) || entry.action === 'undo') continue;
    const { by, at, id: latest } = entry;
    if (entry.action === 'add') {
      const first = { id: entry.id, number, corrections: 0, removed: false };
      things.set(entry.id, { ...first, ...said(entry), by, at, latest } as Thing);
      continue;
    }
    const before = things.get(entry.thing);
    if (before === undefined) continue;
    if (entry.action === 'remove') things.set(entry.thing, { ...before, by, at, latest, removed: true });
    else {
      const { id, number: first, removed } = before;
      const corrections = before.corrections + 1;
      things.set(id, { id, number: first, corrections, removed, ...said(entry), by, at, latest } as Thing);
    }
  }
  return things;
}

function said(entry: Extract<Entry, { action: 'add' | 'correct' }>) {
  const { kind, content } = entry;
  const place = 'place' in entry ? entry.place : undefined;
  return place === undefined ? { kind, content } : { kind, content, place };
}

/** Whether a thing stands: neither it nor the place it belongs to has been removed or taken back. */
export function stands(thing: Thing, things: ReadonlyMap<string, Thing>): boolean {
  if (thing.removed) return false;
  if (thing.place === undefined) return true;
  const place = things.get(thing.place);
  return place !== undefined && !place.removed;
}
