import { type Kysely, type Migration, Migrator } from 'kysely';
import type { DatabaseKind } from './database.ts';
import { record } from './migrations/0001-record.ts';
import { photos } from './migrations/0002-photos.ts';
import { days } from './migrations/0003-days.ts';
import type { Tables } from './tables.ts';

/** The steps from an empty database to the newest tables, in order. A step that was published is never changed. */
export const migrations = (kind: DatabaseKind): Readonly<Record<string, Migration>> => ({
  '0001-record': record(kind),
  '0002-photos': photos(kind),
  '0003-days': days(),
});

export type Standing = 'empty' | 'older' | 'current' | 'newer';

/** How the tables in the database stand to those this program knows. */
export async function standing(db: Kysely<Tables>, kind: DatabaseKind): Promise<Standing> {
  const tables = await db.introspection.getTables({ withInternalKyselyTables: true });
  if (!tables.some((table) => table.name === 'kysely_migration')) return 'empty';
  const known = Object.keys(migrations(kind));
  const done = await (db as unknown as Kysely<{ kysely_migration: { name: string } }>)
    .selectFrom('kysely_migration')
    .select('name')
    .execute();
  if (done.some(({ name }) => !known.includes(name))) return 'newer';
  return done.length === 0 ? 'empty' : done.length < known.length ? 'older' : 'current';
}

/**
 * Brings the tables up to date, all steps in one transaction: either all of it happened or nothing did.
 *
 * @param upTo name of the last step to take; the newest when left out
 */
export async function migrate(db: Kysely<Tables>, kind: DatabaseKind, upTo?: string): Promise<void> {
  const migrator = new Migrator({ db, provider: { getMigrations: async () => ({ ...migrations(kind) }) } });
  const { error } = upTo === undefined ? await migrator.migrateToLatest() : await migrator.migrateTo(upTo);
  if (error !== undefined) throw error;
}
