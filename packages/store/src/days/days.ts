import type { Database } from '../database/database.ts';
import type { Tables } from '../database/tables.ts';
import { guarded, inTransaction } from '../store/guard.ts';
import type { Delivery } from './delivery.ts';
import { postgresDelivery } from './delivery-postgres.ts';
import { sqliteDelivery } from './delivery-sqlite.ts';
import { handIn } from './hand-in.ts';
import type { Days, SampleJob } from './types.ts';
import { createWaker, startWorker } from './worker.ts';

/** Planning a sample takes a second or two. */
const PATIENCE = 120;

/**
 * The soil days of one store.
 *
 * @param patience seconds after which a sample may be taken over by another machine (PostgreSQL only)
 */
export function createDays(database: Database, patience = PATIENCE): Days & { close(): Promise<void> } {
  const delivery: Delivery =
    database.kind === 'sqlite' ? sqliteDelivery(database) : postgresDelivery(database, patience);
  const waker = createWaker();

  const setPaused = (garden: string, paused: 0 | 1) =>
    inTransaction(database, async (tx) => {
      await tx.updateTable('day_run').set({ paused }).where('garden', '=', garden).execute();
    });

  return {
    async enqueue(garden, samples, options) {
      const readied = await guarded(database, () => delivery.ready(garden));
      if (!readied.ok) return readied;
      const done = await inTransaction(database, async (tx) => {
        await delivery.send(tx, garden, await handIn(tx, garden, samples, options));
      });
      waker.wake();
      return done;
    },
    progress: (garden) =>
      guarded(database, async (db) => {
        const run = await db.selectFrom('day_run').selectAll().where('garden', '=', garden).executeTakeFirst();
        if (run === undefined) return undefined;
        const rows = await db
          .selectFrom('day_job')
          .selectAll()
          .where('garden', '=', garden)
          .orderBy('position')
          .execute();
        return { paused: run.paused === 1, options: run.options, samples: rows.map(jobOf) };
      }),
    pause: (garden) => setPaused(garden, 1),
    async resume(garden) {
      const done = await setPaused(garden, 0);
      waker.wake();
      return done;
    },
    async retry(garden) {
      const done = await inTransaction(database, async (tx) => {
        const rows = await tx
          .updateTable('day_job')
          .set({ state: 'waiting', tries: 0, error: null })
          .where('garden', '=', garden)
          .where('state', '=', 'failed')
          .returning('place')
          .execute();
        await delivery.send(
          tx,
          garden,
          rows.map(({ place }) => place),
        );
      });
      waker.wake();
      return done;
    },
    results: (garden) =>
      guarded(database, (db) =>
        db
          .selectFrom('day_result')
          .innerJoin('day_job', (join) =>
            join.onRef('day_job.garden', '=', 'day_result.garden').onRef('day_job.place', '=', 'day_result.place'),
          )
          .select(['day_job.place', 'day_job.code', 'day_result.source', 'day_result.body'])
          .where('day_result.garden', '=', garden)
          .orderBy('day_job.position')
          .execute(),
      ),
    work: (planner, options) => startWorker(delivery, (work) => inTransaction(database, work), waker, planner, options),
    close: () => delivery.stop(),
  };
}

function jobOf({ place, code, source, state, tries, error }: Tables['day_job']): SampleJob {
  return { place, code, source, state, tries, ...(error === null ? {} : { error }) };
}
