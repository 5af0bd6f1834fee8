import { existsSync } from 'node:fs';
import { mkdir, open, readdir, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { fail, ok, type Result } from '@sorrel/engine/derivation';
import type { Database } from '../database/database.ts';
import { openSqlite } from '../database/sqlite.ts';
import { problem } from '../problems.ts';

export interface BackupPlan {
  readonly folder: string;
  /** How many dated backups to keep; the oldest go first. At least 1. */
  readonly keep: number;
}

export interface Backup {
  readonly file: string;
  /** False when the backup of that day was there already. */
  readonly fresh: boolean;
  /** Names of older backups that were deleted. */
  readonly dropped: readonly string[];
}

const dated = /^sorrel-\d{4}-\d{2}-\d{2}\.sqlite$/;

/**
 * Makes the backup of a day, once: a copy while the store stays in use, checked page by page before it gets its name,
 * so that a file with a backup's name is always a good one. Then deletes what is beyond `keep`; files of other names
 * are never touched.
 *
 * @param day the day of the backup, ISO 8601; the clock is the caller's
 */
export async function backup(database: Database, plan: BackupPlan, day: string): Promise<Result<Backup>> {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(day) || !(plan.keep >= 1)) throw new RangeError('backup: needs a day and keep >= 1');
  const file = join(plan.folder, `sorrel-${day}.sqlite`);
  if (existsSync(file)) return ok({ file, fresh: false, dropped: [] });
  const copied = await copyChecked(database, file);
  if (!copied.ok) return copied;
  const names = (await readdir(plan.folder)).filter((name) => dated.test(name)).sort();
  const dropped = names.slice(0, Math.max(0, names.length - plan.keep));
  for (const name of dropped) await rm(join(plan.folder, name));
  return ok({ file, fresh: true, dropped });
}

/** Copies a SQLite store into a new file, checks the copy and only then gives it its name. */
export async function copyChecked(database: Database, file: string): Promise<Result<void>> {
  if (database.copyTo === undefined) return fail(problem('store.not-a-file', 'database', database.where));
  const part = `${file}.part`;
  try {
    await mkdir(join(file, '..'), { recursive: true });
    await rm(part, { force: true });
    await database.copyTo(part);
    const copy = openSqlite(part, { copy: true });
    const found = await copy.integrity().finally(() => copy.close());
    if (found.length > 0) throw new Error(found[0]);
    await sync(part);
    await rename(part, file);
    await sync(join(file, '..'));
    return ok(undefined);
  } catch (error) {
    await rm(part, { force: true }).catch(() => undefined);
    const reason = error instanceof Error ? error.message : String(error);
    return fail(problem('store.backup-failed', 'backup', file, { reason }));
  }
}

/** Waits until a file, or the names in a folder, are on the disk. */
async function sync(path: string): Promise<void> {
  const handle = await open(path, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}
