import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { entriesFromDocument, newId, type Store } from '@sorrel/store';
import { parse } from 'yaml';
import { orRefuse } from './http/store-refusals.ts';
import { inventedDay } from './invented-day.ts';

/** Invented gardens have ids of their own for ever: put in twice they are there once, and removed they stay removed. */
const written = '2026-11-25T00:00:00Z';

/** Whether a garden is one of those put in by `seed`: their ids carry a moment of their own. */
export const isInvented = (id: string): boolean =>
  Number.parseInt(id.slice(0, 13).replace('-', ''), 16) === Date.parse(written);

function idsFor(file: string): () => string {
  let count = 0;
  return () => {
    count += 1;
    return newId(Date.parse(written), createHash('sha256').update(`${file} ${count}`).digest().subarray(0, 16));
  };
}

/**
 * Puts the invented gardens and an invented soil day into a record that has never held any garden.
 *
 * @returns how many were put in
 */
export async function seed(store: Store, folder: string): Promise<number> {
  const files = readdirSync(folder).filter((file) => /\.ya?ml$/.test(file));
  if (orRefuse(await store.gardens()).length > 0) return 0;
  for (const file of files) if (orRefuse(await store.version(idsFor(file)())) > 0) return 0;
  for (const file of files) {
    const document: unknown = parse(readFileSync(join(folder, file), 'utf8'));
    const entries = orRefuse(entriesFromDocument(document, { by: 'Sorrel', at: written, newId: idsFor(file) }));
    orRefuse(await store.append(entries));
  }
  orRefuse(await store.append(inventedDay('Sorrel', written, idsFor('soil day'))));
  return files.length + 1;
}
