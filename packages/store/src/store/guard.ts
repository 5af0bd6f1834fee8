import { fail, ok, type Result } from '@sorrel/engine/derivation';
import type { Kysely, Transaction } from 'kysely';
import type { Database } from '../database/database.ts';
import type { Tables } from '../database/tables.ts';
import { Refusal } from '../problems.ts';

/** Runs work on the database and turns refusals and the database's own faults into problems. Faults of ours are thrown. */
export async function guarded<T>(database: Database, work: (db: Kysely<Tables>) => Promise<T>): Promise<Result<T>> {
  try {
    return ok(await work(database.db));
  } catch (error) {
    if (error instanceof Refusal) return fail(...error.problems);
    const problem = database.explain(error);
    if (problem !== undefined) return fail(problem);
    throw error;
  }
}

/** The same in one transaction: when it fails, nothing of it was stored. */
export const inTransaction = <T>(
  database: Database,
  work: (tx: Transaction<Tables>) => Promise<T>,
): Promise<Result<T>> => guarded(database, (db) => db.transaction().execute(work));
