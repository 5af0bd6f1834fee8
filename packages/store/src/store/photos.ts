import { createHash } from 'node:crypto';
import { fail, type Problem, type Result } from '@sorrel/engine/derivation';
import type { Kysely } from 'kysely';
import type { Database } from '../database/database.ts';
import type { Tables } from '../database/tables.ts';
import { problem } from '../problems.ts';
import { guarded, inTransaction } from './guard.ts';

/** Media types of photos that browsers show (IANA media types). */
export const photoTypes = ['image/jpeg', 'image/png', 'image/webp', 'image/avif'] as const;
export type PhotoType = (typeof photoTypes)[number];

export interface Photo {
  /** SHA-256 of the bytes, in hexadecimal: its name. */
  readonly hash: string;
  readonly type: PhotoType;
  readonly bytes: Uint8Array;
}

/** SHA-256 (FIPS 180-4) in small hexadecimal digits. */
export const hashOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

export function photoProblem(type: string, bytes: Uint8Array): Problem | undefined {
  if (!(photoTypes as readonly string[]).includes(type))
    return problem('store.photo-type', 'type', type, { known: photoTypes.join(', ') });
  return bytes.length === 0 ? problem('store.empty-photo', 'bytes', '') : undefined;
}

export async function insertPhoto(db: Kysely<Tables>, { hash, type, bytes }: Photo): Promise<void> {
  await db
    .insertInto('photo')
    .values({ hash, type, size: bytes.length, bytes: Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length) })
    .onConflict((conflict) => conflict.column('hash').doNothing())
    .execute();
}

/** Stores a photo under its hash; one that is there already is left as it is. */
export async function putPhoto(
  database: Database,
  type: string,
  bytes: Uint8Array,
): Promise<Result<{ readonly hash: string }>> {
  const wrong = photoProblem(type, bytes);
  if (wrong !== undefined) return fail(wrong);
  const hash = hashOf(bytes);
  return inTransaction(database, async (tx) => {
    await insertPhoto(tx, { hash, type: type as PhotoType, bytes });
    return { hash };
  });
}

/** The photo of that hash, or undefined when the store has none. */
export const photo = (database: Database, hash: string): Promise<Result<Photo | undefined>> =>
  guarded(database, (db) => findPhoto(db, hash));

export async function findPhoto(db: Kysely<Tables>, hash: string): Promise<Photo | undefined> {
  const row = await db.selectFrom('photo').select(['type', 'bytes']).where('hash', '=', hash).executeTakeFirst();
  return row === undefined ? undefined : { hash, type: row.type as PhotoType, bytes: row.bytes };
}
