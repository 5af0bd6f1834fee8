import type { Transaction } from 'kysely';
import type { Tables } from '../database/tables.ts';
import type { Entry, UndoEntry } from '../entry/entry.ts';
import { problem, Refusal } from '../problems.ts';
import { type Numbered, takenBack, thingsOf } from '../record/things.ts';

/** The garden's record as a new entry meets it. */
export interface Ground {
  readonly tx: Transaction<Tables>;
  find(id: string): Numbered | undefined;
  entries(): readonly Numbered[];
}

/**
 * Checks that an entry fits what the record already holds: that what it is about is there, of its kind and, where it
 * asks for that, unchanged.
 *
 * @throws Refusal with the reason
 */
export async function fits(entry: Entry, ground: Ground): Promise<void> {
  if (entry.action === 'undo') return fitsUndo(entry, ground);
  if (entry.action === 'add' && entry.kind === 'garden') {
    if (entry.id !== entry.garden)
      throw new Refusal(
        problem(ground.find(entry.garden) ? 'store.garden-once' : 'store.own-garden-id', 'id', entry.id, {
          garden: entry.garden,
        }),
      );
  } else if (ground.find(entry.garden) === undefined)
    throw new Refusal(problem('store.no-garden', 'garden', entry.garden));
  if (entry.action !== 'add') {
    const first = ground.find(entry.thing)?.entry;
    if (first?.action !== 'add') throw new Refusal(problem('store.no-thing', 'thing', entry.thing));
    if (entry.action === 'correct' && entry.kind !== first.kind)
      throw new Refusal(problem('store.other-kind', 'kind', entry.kind, { known: first.kind }));
    if (entry.seen !== undefined && thingsOf(ground.entries()).get(entry.thing)?.latest !== entry.seen)
      throw new Refusal(problem('store.changed-meanwhile', 'seen', entry.seen));
  }
  if ('place' in entry && entry.place !== undefined) {
    const place = ground.find(entry.place)?.entry;
    if (place?.action !== 'add' || place.kind !== 'place')
      throw new Refusal(problem('store.no-place', 'place', entry.place));
  }
  if (entry.action !== 'remove' && entry.kind === 'observation')
    for (const hash of entry.content.photos ?? []) {
      const photo = await ground.tx.selectFrom('photo').select('size').where('hash', '=', hash).executeTakeFirst();
      if (photo === undefined) throw new Refusal(problem('store.no-photo', 'content.photos', hash));
    }
}

function fitsUndo(entry: UndoEntry, ground: Ground): void {
  const target = ground.find(entry.entry)?.entry;
  if (target === undefined) throw new Refusal(problem('store.no-thing', 'entry', entry.entry));
  if (target.by !== entry.by)
    throw new Refusal(problem('store.not-yours', 'entry', entry.entry, { owner: target.by, person: entry.by }));
  if (takenBack(ground.entries()).has(target.id)) throw new Refusal(problem('store.taken-back', 'entry', entry.entry));
}
