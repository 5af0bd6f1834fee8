import { type Kysely, sql } from 'kysely';
import type { DatabaseKind } from '../database.ts';
import { appendOnly } from './append-only.ts';

/** Photos, kept under the hash of their bytes. */
export const photos = (kind: DatabaseKind) => ({
  async up(db: Kysely<unknown>): Promise<void> {
    await db.schema
      .createTable('photo')
      .addColumn('hash', 'text', (column) => column.primaryKey().notNull())
      .addColumn('type', 'text', (column) => column.notNull())
      .addColumn('size', 'integer', (column) => column.notNull())
      .addColumn('bytes', kind === 'sqlite' ? 'blob' : sql`bytea`, (column) => column.notNull())
      .execute();
    await appendOnly(db, kind, 'photo');
  },
});
