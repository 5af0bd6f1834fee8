import type { Problem, Result } from '@sorrel/engine/derivation';
import type { Kysely } from 'kysely';
import type { Database } from '../database/database.ts';
import type { Tables } from '../database/tables.ts';
import { checkEntry } from '../entry/check-entry.ts';
import { problem } from '../problems.ts';
import { guarded } from './guard.ts';
import { hashOf } from './photos.ts';

export interface Checked {
  readonly gardens: number;
  readonly entries: number;
  readonly photos: number;
  /** What is wrong; nothing when the store is sound. */
  readonly problems: readonly Problem[];
}

/**
 * Checks everything that is stored: the database's own integrity check, then that the numbers of each garden run from
 * 1 without a gap, that each entry still fits its schema and its row, and that each photo still has its hash.
 */
export const check = (database: Database): Promise<Result<Checked>> =>
  guarded(database, async (db) => {
    const problems: Problem[] = [];
    for (const reason of await database.integrity())
      problems.push(problem('store.damaged', 'database', database.where, { reason }));
    const gardens = await db.selectFrom('garden').selectAll().orderBy('id').execute();
    let entries = 0;
    for (const garden of gardens) entries += await checkGarden(db, garden, problems);
    return { gardens: gardens.length, entries, photos: await checkPhotos(db, problems), problems };
  });

async function checkGarden(
  db: Kysely<Tables>,
  garden: { readonly id: string; readonly version: number },
  problems: Problem[],
): Promise<number> {
  const wrong = (field: string, id: string) => problems.push(problem('store.disagrees', field, id));
  const rows = await db.selectFrom('entry').selectAll().where('garden', '=', garden.id).orderBy('number').execute();
  if (rows.length !== garden.version) wrong('version', garden.id);
  for (const [index, { number, id, body }] of rows.entries()) {
    if (number !== index + 1) wrong('number', id);
    const checked = checkEntry(parsed(body));
    if (!checked.ok) problems.push(...checked.problems);
    else if (checked.value.id !== id || checked.value.garden !== garden.id || JSON.stringify(checked.value) !== body)
      wrong('body', id);
  }
  return rows.length;
}

async function checkPhotos(db: Kysely<Tables>, problems: Problem[]): Promise<number> {
  const photos = await db.selectFrom('photo').select('hash').orderBy('hash').execute();
  for (const { hash } of photos) {
    const row = await db.selectFrom('photo').select(['bytes', 'size']).where('hash', '=', hash).executeTakeFirst();
    if (row === undefined || row.size !== row.bytes.length || hashOf(row.bytes) !== hash)
      problems.push(problem('store.disagrees', 'bytes', hash));
  }
  return photos.length;
}

function parsed(body: string): unknown {
  try {
    return JSON.parse(body);
  } catch {
    return body;
  }
}
