import { randomUUID } from 'node:crypto';
import { sql } from 'kysely';
import type { Database } from '../database/database.ts';
import type { Claimed, Delivery } from './delivery.ts';

/** One program has the file, so the rows themselves are the queue. */
export function sqliteDelivery({ db }: Database): Delivery {
  const nothing = async () => undefined;
  return {
    ready: nothing,
    send: nothing,
    settle: nothing,
    again: nothing,
    stop: nothing,
    async recover() {
      await db
        .transaction()
        .execute((tx) =>
          tx.updateTable('day_job').set({ state: 'waiting', claim: null }).where('state', '=', 'running').execute(),
        );
    },
    async take() {
      const open = await db
        .selectFrom('day_job')
        .innerJoin('day_run', 'day_run.garden', 'day_job.garden')
        .select('day_job.place')
        .where('state', '=', 'waiting')
        .where('paused', '=', 0)
        .limit(1)
        .executeTakeFirst();
      if (open === undefined) return undefined;
      const claim = randomUUID();
      return db.transaction().execute(async (tx) => {
        const { rows } = await sql<Claimed>`
          update day_job set state = 'running', claim = ${claim}
          where (garden, place) = (
            select j.garden, j.place from day_job j join day_run r on r.garden = j.garden
            where j.state = 'waiting' and r.paused = 0 order by j.garden, j.position limit 1)
          returning garden, place, code, claim, (select options from day_run r where r.garden = day_job.garden) as options`.execute(
          tx,
        );
        return rows[0];
      });
    },
  };
}
