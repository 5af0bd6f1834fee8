import { existsSync } from 'node:fs';
import { fail, ok, type Result } from '@sorrel/engine/derivation';
import { copyChecked } from '../backup/backup.ts';
import type { Database } from '../database/database.ts';
import { migrate, standing } from '../database/migrate.ts';
import { openPostgres } from '../database/postgres.ts';
import { NotOurs, openSqlite, waiting } from '../database/sqlite.ts';
import { explainSqlite } from '../database/sqlite-errors.ts';
import { problem } from '../problems.ts';

/** Opens the database and brings its tables up to date; a SQLite file of an older version is copied first. */
export async function openDatabase(where: string): Promise<Result<Database>> {
  const opened = /^postgres(ql)?:/.test(where) ? ok(openPostgres(where)) : await openFile(where);
  if (!opened.ok) return opened;
  const database = opened.value;
  const ready = await database
    .alone(() => prepare(database))
    .catch((error: unknown) => {
      const explained = database.explain(error);
      if (explained === undefined) throw error;
      return fail(explained);
    });
  if (ready.ok) return ok(database);
  await database.close().catch(() => undefined);
  return ready;
}

async function openFile(file: string): Promise<Result<Database>> {
  try {
    return ok(await waiting(async () => openSqlite(file)));
  } catch (error) {
    if (error instanceof NotOurs) return fail(problem('store.not-ours', 'file', file));
    const explained = explainSqlite(error, file);
    if (explained === undefined) throw error;
    return fail(explained);
  }
}

async function prepare(database: Database): Promise<Result<void>> {
  const stands = await standing(database.db, database.kind);
  if (stands === 'newer') return fail(problem('store.newer', 'database', database.where));
  if (stands === 'older' && database.kind === 'sqlite') {
    const copied = await copyChecked(database, freeName(database.where));
    if (!copied.ok) return copied;
  }
  if (stands !== 'current') await migrate(database.db, database.kind);
  return ok(undefined);
}

/** A name beside the file that nothing has yet: an old copy is never written over. */
function freeName(file: string): string {
  for (let number = 1; ; number++) {
    const name = `${file}.before-upgrade-${number}`;
    if (!existsSync(name)) return name;
  }
}
