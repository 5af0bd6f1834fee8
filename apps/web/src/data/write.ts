import type { Entry } from './garden-store.ts';
import { newId } from './new-id.ts';

type Added = Extract<Entry, { action: 'add' }>;
export type Kind = Added['kind'];
export type Content<K extends Kind> = Extract<Added, { kind: K }>['content'];
/** Kinds that have no place, and those that may have one. All others happen at a place. */
type Nowhere = 'garden' | 'place' | 'material';
type Anywhere = 'water' | 'feed' | 'observation' | 'task' | 'quality';
type At<K extends Kind> = K extends Nowhere ? [] : K extends Anywhere ? [place?: string] : [place: string];

/** Who writes, until there are accounts. */
const WRITER = 'me';
const head = (garden: string) => ({ id: newId(), garden, by: WRITER, at: new Date().toISOString() });

/** An entry that begins a garden; its id is the garden's. */
export function beginGarden(content: Content<'garden'>): Entry {
  const id = newId();
  return { ...head(id), id, action: 'add', kind: 'garden', content };
}

/** An entry that adds something; its id is the thing's id from then on. */
export function add<K extends Kind>(garden: string, kind: K, content: Content<K>, ...at: At<K>): Entry {
  const [place] = at;
  return { ...head(garden), action: 'add', kind, content, ...(place === undefined ? {} : { place }) } as Entry;
}

/** An entry that says all of a thing anew. The first writing stays in the record. */
export function correct<K extends Kind>(
  garden: string,
  thing: string,
  kind: K,
  content: Content<K>,
  ...at: At<K>
): Entry {
  const [place] = at;
  return {
    ...head(garden),
    action: 'correct',
    thing,
    kind,
    content,
    ...(place === undefined ? {} : { place }),
  } as Entry;
}

/** An entry that ends a thing. */
export const remove = (garden: string, thing: string): Entry => ({ ...head(garden), action: 'remove', thing });

export const takeBack = (garden: string, entry: string): Entry => ({ ...head(garden), action: 'undo', entry });
