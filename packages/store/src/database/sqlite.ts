import { setTimeout } from 'node:timers/promises';
import BetterSqlite3 from 'better-sqlite3';
import {
  CompiledQuery,
  type DatabaseConnection,
  Kysely,
  SqliteAdapter,
  SqliteDialect,
  SqliteDriver,
  SqliteIntrospector,
  SqliteQueryCompiler,
} from 'kysely';
import type { Database } from './database.ts';
import { explainSqlite } from './sqlite-errors.ts';
import type { Tables } from './tables.ts';

/** Marks a file as a garden record, so that the database of another program is never taken for one ("Srrl"). */
export const applicationId = 0x5372726c;

/** How long to wait for somebody else who is writing: so many times, so many milliseconds apart. */
const tries = 1000;
const pause = 10;

/**
 * Tries again while somebody else is writing. The wait leaves the program free: SQLite's own would hold up the very
 * program whose other connection is to be waited for.
 */
export async function waiting<T>(work: () => Promise<T>): Promise<T> {
  for (let left = tries; ; left--)
    try {
      return await work();
    } catch (error) {
      if (left <= 0 || !String((error as { readonly code?: unknown }).code).startsWith('SQLITE_BUSY')) throw error;
      await setTimeout(pause);
    }
}

/** SQLite can roll back changes of tables; the adapter of the query builder does not count on it. */
class Adapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true;
  }
}

/** Takes the write lock at the start, so that two writers queue instead of one failing half way. */
class Driver extends SqliteDriver {
  readonly #file: BetterSqlite3.Database;
  constructor(file: BetterSqlite3.Database) {
    super({ database: file });
    this.#file = file;
  }
  override async beginTransaction(connection: DatabaseConnection): Promise<void> {
    await waiting(async () => connection.executeQuery(CompiledQuery.raw('begin immediate')));
  }
  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    // After some faults, a full disk among them, SQLite has already rolled back.
    if (this.#file.inTransaction) await connection.executeQuery(CompiledQuery.raw('rollback'));
  }
}

class Dialect extends SqliteDialect {
  readonly #file: BetterSqlite3.Database;
  constructor(file: BetterSqlite3.Database) {
    super({ database: file });
    this.#file = file;
  }
  override createAdapter = () => new Adapter();
  override createDriver = () => new Driver(this.#file);
  override createQueryCompiler = () => new SqliteQueryCompiler();
  override createIntrospector = (db: Kysely<unknown>) => new SqliteIntrospector(db);
}

/** Thrown when the file is a sound SQLite database, but not one of ours. */
export class NotOurs extends Error {}

/**
 * Opens or makes the file; fails at once with SQLITE_BUSY while somebody else makes it. The write-ahead log with full synchronisation means: what was acknowledged is on the disk.
 *
 * @param options `copy`: a finished copy, which then stands in one file without a log beside it
 * @throws NotOurs, or an error that `explainSqlite` knows
 */
export function openSqlite(file: string, options: { readonly copy?: boolean } = {}): SqliteFile {
  const copy = options.copy === true;
  const raw = new BetterSqlite3(file, { timeout: 0, fileMustExist: copy });
  try {
    const mark = raw.pragma('application_id', { simple: true });
    if (mark !== applicationId) {
      const objects = raw.prepare('select count(*) from sqlite_schema').pluck().get();
      if (mark !== 0 || objects !== 0 || copy) throw new NotOurs(file);
      raw.pragma(`application_id = ${applicationId}`);
    }
    raw.pragma(`journal_mode = ${copy ? 'delete' : 'wal'}`);
    raw.pragma('synchronous = full');
    raw.pragma('foreign_keys = on');
    raw.pragma('trusted_schema = off');
  } catch (error) {
    raw.close();
    throw error;
  }
  // Asked with every reading, and prepared once: the table is there only after the first migration.
  let version: BetterSqlite3.Statement<[string], number> | undefined;
  const db = new Kysely<Tables>({ dialect: new Dialect(raw) });
  return {
    kind: 'sqlite',
    where: file,
    raw,
    db,
    explain: (error) => explainSqlite(error, file),
    async integrity() {
      const found = raw.pragma('integrity_check') as { readonly integrity_check: string }[];
      const foreign = raw.pragma('foreign_key_check') as { readonly table: string; readonly rowid: number }[];
      return [
        ...found.map((row) => row.integrity_check).filter((said) => said !== 'ok'),
        ...foreign.map((row) => `row ${row.rowid} of ${row.table} points to a row that is not there`),
      ];
    },
    // Both who come first try; the one who finds the other at work starts over and finds the work done.
    alone: waiting,
    version(garden) {
      version ??= raw.prepare<[string], number>('select version from garden where id = ?').pluck();
      return version.get(garden) ?? 0;
    },
    async copyTo(target) {
      await raw.backup(target);
    },
    close: () => db.destroy(),
  };
}

export interface SqliteFile extends Database {
  readonly raw: BetterSqlite3.Database;
}
