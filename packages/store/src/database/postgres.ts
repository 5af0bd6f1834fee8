import { Kysely, PostgresDialect, sql } from 'kysely';
import { Pool } from 'pg';
import type { Database } from './database.ts';
import { explainPostgres } from './postgres-errors.ts';
import type { Tables } from './tables.ts';

/** Names our lock among those of the database ("Srrl"). */
const lockKey = 0x5372726c;

const tables = ['garden', 'entry', 'photo', 'day_run', 'day_job', 'day_result'] as const;

/** The address without user, password and options. */
function shownAddress(url: string): string {
  try {
    const { hostname, port, pathname } = new URL(url);
    return `${hostname || 'localhost'}${port === '' ? '' : `:${port}`}${pathname}`;
  } catch {
    return 'the given address';
  }
}

/** Connects on first use. Each commit waits until the server has it on its disk, whatever the server's default is. */
export function openPostgres(url: string): Database {
  const pool = new Pool({
    connectionString: url,
    max: 10,
    connectionTimeoutMillis: 10_000,
    options: '-c synchronous_commit=on -c timezone=UTC',
  });
  // A connection that breaks while idle is replaced on next use; without a listener it would end the process.
  pool.on('error', () => undefined);
  // So does one that breaks while it is in use: who uses it hears of it by its own query.
  pool.on('connect', (client) => client.on('error', () => undefined));
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  const where = shownAddress(url);
  return {
    kind: 'postgres',
    where,
    db,
    explain: (error) => explainPostgres(error, where),
    integrity: () => integrityOf(db),
    alone: (work) =>
      db.connection().execute(async (one) => {
        await sql`select pg_advisory_lock(${lockKey})`.execute(one);
        try {
          return await work();
        } finally {
          await sql`select pg_advisory_unlock(${lockKey})`.execute(one).catch(() => undefined);
        }
      }),
    close: () => db.destroy(),
  };
}

/** Reads every page through the server's checksums, and asks `amcheck` when the server has that extension. */
async function integrityOf(db: Kysely<Tables>): Promise<readonly string[]> {
  const found: string[] = [];
  for (const table of tables)
    try {
      await sql`select count(t::text) from ${sql.table(table)} t`.execute(db);
    } catch (error) {
      found.push(`${table}: ${error instanceof Error ? error.message : String(error)}`);
    }
  const extension = await sql`select 1 from pg_extension where extname = 'amcheck'`.execute(db);
  if (extension.rows.length === 0) return found;
  const indexes = await sql<{ name: string }>`
    select c.relname as name from pg_index i join pg_class c on c.oid = i.indexrelid
    where i.indrelid in (${sql.join(tables.map((table) => sql`${sql.lit(table)}::regclass`))})`.execute(db);
  for (const { name } of indexes.rows)
    try {
      await sql`select bt_index_check(${name}::regclass, true)`.execute(db);
    } catch (error) {
      found.push(`${name}: ${error instanceof Error ? error.message : String(error)}`);
    }
  for (const table of tables) {
    const rows = await sql<{ msg: string }>`select msg from verify_heapam(${table}::regclass)`.execute(db);
    found.push(...rows.rows.map((row) => `${table}: ${row.msg}`));
  }
  return found;
}
