import { type Kysely, sql } from 'kysely';
import type { DatabaseKind } from '../database.ts';

/** Makes the database itself refuse to change or delete the rows of a table. */
export async function appendOnly(db: Kysely<unknown>, kind: DatabaseKind, table: string): Promise<void> {
  if (kind === 'postgres') {
    await sql`create or replace function sorrel_append_only() returns trigger language plpgsql as $$
      begin raise exception 'rows of % are never changed or deleted', tg_table_name; end $$`.execute(db);
    await sql`create trigger ${sql.ref(`${table}_append_only`)} before update or delete or truncate on ${sql.table(table)}
      for each statement execute function sorrel_append_only()`.execute(db);
    return;
  }
  for (const change of ['update', 'delete'])
    await sql`create trigger ${sql.ref(`${table}_no_${change}`)} before ${sql.raw(change)} on ${sql.table(table)}
      begin select raise(abort, 'rows are never changed or deleted'); end`.execute(db);
}
