import { randomUUID } from 'node:crypto';
import { CompiledQuery, type Kysely, type Transaction } from 'kysely';
import type PgBoss from 'pg-boss';
import type { Database } from '../database/database.ts';
import type { Tables } from '../database/tables.ts';
import type { Claimed, Delivery } from './delivery.ts';

/** Lets the queue write through our connections, and in our transactions. */
const through = (db: Kysely<Tables>): PgBoss.Db => ({
  executeSql: async (text, values = []) => {
    const { rows } = await db.executeQuery(CompiledQuery.raw(text, values));
    return { rows: rows as object[] };
  },
});

/** Far more often than any sample can be interrupted; how often planning may fail is counted in its row. */
const MOST_DELIVERIES = 1000;
const HOUR = 3600_000;
/** A day may lie half planned for as long as anybody likes; the queue's own two weeks would lose what waits. */
const KEPT_DAYS = 36_500;

/**
 * Several machines share the samples through a queue library (`docs/decisions/0033-pg-boss.md`), a queue a day. A
 * delivery that is not settled within its time goes to another worker.
 *
 * @param patience seconds until then
 */
export function postgresDelivery({ db }: Database, patience: number): Delivery {
  let started: Promise<PgBoss> | undefined;
  let cleaned = Number.NEGATIVE_INFINITY;
  let looked = Number.NEGATIVE_INFINITY;
  const queue = (): Promise<PgBoss> => {
    started ??= start().catch((error: unknown) => {
      started = undefined;
      throw error;
    });
    return started;
  };
  async function start(): Promise<PgBoss> {
    const { default: Queue } = await import('pg-boss');
    const boss = new Queue({
      db: through(db),
      schema: 'sorrel_queue',
      supervise: false,
      schedule: false,
      retentionDays: KEPT_DAYS,
    });
    boss.on('error', () => undefined);
    return boss.start();
  }
  const known = new Set<string>();
  async function ready(garden: string): Promise<void> {
    if (known.has(garden)) return;
    await (await queue()).createQueue(garden);
    known.add(garden);
  }

  /** Gardens with work to do or under way. */
  const open = () =>
    db
      .selectFrom('day_job')
      .innerJoin('day_run', 'day_run.garden', 'day_job.garden')
      .select('day_job.garden')
      .where('state', 'in', ['waiting', 'running'])
      .where('paused', '=', 0)
      .groupBy('day_job.garden')
      .orderBy('day_job.garden')
      .execute();

  async function takeFrom(boss: PgBoss, garden: string): Promise<Claimed | undefined | 'stale'> {
    return db.transaction().execute(async (tx) => {
      const [delivered] = await boss.fetch<{ place: string }>(garden, { batchSize: 1, db: through(tx) });
      if (delivered === undefined) return undefined;
      const { place } = delivered.data;
      const claim = `${delivered.id} ${randomUUID()}`;
      const taken = await tx
        .updateTable('day_job')
        .set({ state: 'running', claim })
        .where('garden', '=', garden)
        .where('place', '=', place)
        // Delivered a second time after its time was up, or never begun. What has come twice in two deliveries is dropped.
        .where((row) =>
          row.or([
            row('state', '=', 'waiting'),
            row.and([row('state', '=', 'running'), row('claim', 'like', `${delivered.id} %`)]),
          ]),
        )
        .returning('code')
        .executeTakeFirst();
      if (taken === undefined) {
        await boss.complete(garden, delivered.id, {}, { db: through(tx) });
        return 'stale';
      }
      const { options } = await tx
        .selectFrom('day_run')
        .select('options')
        .where('garden', '=', garden)
        .executeTakeFirstOrThrow();
      return { garden, place, code: taken.code, options, claim };
    });
  }

  const idOf = ({ claim }: Claimed): string => claim.split(' ')[0] ?? '';
  return {
    ready,
    async send(tx: Transaction<Tables>, garden, places) {
      if (places.length === 0) return;
      const boss = await queue();
      const jobs = places.map((place, index) => ({
        name: garden,
        data: { place },
        priority: -index,
        expireInSeconds: patience,
        retryLimit: MOST_DELIVERIES,
      }));
      await boss.insert(jobs, { db: through(tx) });
    },
    recover: async () => undefined,
    async take() {
      const gardens = await open();
      if (gardens.length === 0) return undefined;
      const boss = await queue();
      const now = performance.now();
      if (now - cleaned > HOUR) {
        cleaned = now;
        await boss.maintain();
      }
      for (const { garden } of gardens) {
        await ready(garden);
        let taken = await takeFrom(boss, garden);
        while (taken === 'stale') taken = await takeFrom(boss, garden);
        if (taken !== undefined) return taken;
      }
      // Everything is with some worker; perhaps one of them is no more.
      if (now - looked > Math.min(5000, (patience * 1000) / 4)) {
        looked = now;
        await boss.expire();
      }
      return undefined;
    },
    async settle(tx, claimed) {
      await (await queue()).complete(claimed.garden, idOf(claimed), {}, { db: through(tx) });
    },
    async again(tx, claimed) {
      await (await queue()).fail(claimed.garden, idOf(claimed), {}, { db: through(tx) });
    },
    async stop() {
      await (await started)?.stop({ graceful: false });
    },
  };
}
