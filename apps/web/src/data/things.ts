import type { Entry } from './garden-store.ts';
import type { Content, Kind } from './write.ts';

/** Something of the record as it stands: the last that was said of it. */
export interface Thing<K extends Kind = Kind> {
  readonly id: string;
  readonly kind: K;
  readonly place: string | undefined;
  readonly content: Content<K>;
  /** Entries about it that hold, oldest first. */
  readonly history: readonly Entry[];
}

/** Ids of entries that were taken back; an undo can itself be taken back. */
export function takenBack(entries: readonly Entry[]): ReadonlySet<string> {
  const gone = new Set<string>();
  for (let i = entries.length - 1; i >= 0; i--) {
    const entry = entries[i];
    if (entry?.action === 'undo' && !gone.has(entry.id)) gone.add(entry.entry);
  }
  return gone;
}

/** Everything of the record that holds: added, perhaps corrected, not removed, not taken back. In order of adding. */
export function things(entries: readonly Entry[]): readonly Thing[] {
  const gone = takenBack(entries);
  const found = new Map<string, Thing>();
  for (const entry of entries) {
    if (gone.has(entry.id) || entry.action === 'undo') continue;
    if (entry.action === 'add') found.set(entry.id, thing(entry.id, entry, []));
    else {
      const before = found.get(entry.thing);
      if (before === undefined) continue;
      if (entry.action === 'remove') found.delete(entry.thing);
      else found.set(entry.thing, thing(entry.thing, entry, before.history));
    }
  }
  const all = [...found.values()];
  // With a place goes all that happened there.
  return all.filter((each) => each.place === undefined || found.has(each.place));
}

const thing = (id: string, entry: Extract<Entry, { kind: Kind }>, history: readonly Entry[]): Thing => ({
  id,
  kind: entry.kind,
  place: 'place' in entry ? entry.place : undefined,
  content: entry.content,
  history: [...history, entry],
});

/** Only the things of one kind, with the type of what they say. */
export const ofKind = <K extends Kind>(all: readonly Thing[], kind: K): readonly Thing<K>[] =>
  all.filter((each) => each.kind === kind) as unknown as readonly Thing<K>[];
