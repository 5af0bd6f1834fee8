import { type Kysely, sql } from 'kysely';
import type { DatabaseKind } from '../database.ts';
import { appendOnly } from './append-only.ts';

/** Gardens and their entries. */
export const record = (kind: DatabaseKind) => ({
  async up(db: Kysely<unknown>): Promise<void> {
    await db.schema
      .createTable('garden')
      .addColumn('id', 'text', (column) => column.primaryKey().notNull())
      .addColumn('version', 'integer', (column) => column.notNull().check(sql`version >= 0`))
      .execute();
    await db.schema
      .createTable('entry')
      .addColumn('garden', 'text', (column) => column.notNull().references('garden.id'))
      .addColumn('number', 'integer', (column) => column.notNull().check(sql`number >= 1`))
      .addColumn('id', 'text', (column) => column.notNull().unique())
      .addColumn('body', 'text', (column) => column.notNull())
      .addPrimaryKeyConstraint('entry_key', ['garden', 'number'])
      .execute();
    await appendOnly(db, kind, 'entry');
  },
});
