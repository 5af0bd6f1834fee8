import type { Transaction } from 'kysely';
import type { Tables } from '../database/tables.ts';
import { problem, Refusal } from '../problems.ts';
import type { SampleToPlan } from './types.ts';

/** Rows written at once, well below the most parameters a statement may have. */
const AT_ONCE = 500;

/**
 * Writes down the samples of a day, in check-in order.
 *
 * @returns the places that wait for a worker from now on
 * @throws Refusal when there is no such garden
 */
export async function handIn(
  tx: Transaction<Tables>,
  garden: string,
  samples: readonly SampleToPlan[],
  options: string,
): Promise<readonly string[]> {
  const there = await tx.selectFrom('garden').select('id').where('id', '=', garden).executeTakeFirst();
  if (there === undefined) throw new Refusal(problem('store.no-garden', 'garden', garden));
  // Its row is held until the end, so that two who hand in the same day come one after the other.
  await tx
    .insertInto('day_run')
    .values({ garden, options, paused: 0 })
    .onConflict((conflict) => conflict.column('garden').doUpdateSet({ options, paused: 0 }))
    .execute();
  const before = new Map(
    (await tx.selectFrom('day_job').selectAll().where('garden', '=', garden).execute()).map((job) => [job.place, job]),
  );
  const fresh: Tables['day_job'][] = [];
  const waiting: string[] = [];
  for (const [position, { place, code, source }] of samples.entries()) {
    const job = before.get(place);
    before.delete(place);
    const anew = job?.source !== source;
    if (anew || job?.state === 'waiting') waiting.push(place);
    const state = { state: 'waiting', tries: 0, error: null, claim: null } as const;
    if (job === undefined) fresh.push({ garden, place, code, position, source, ...state });
    else if (anew || job.code !== code || job.position !== position)
      await tx
        .updateTable('day_job')
        .set({ code, position, source, ...(anew ? state : {}) })
        .where('garden', '=', garden)
        .where('place', '=', place)
        .execute();
  }
  for (let at = 0; at < fresh.length; at += AT_ONCE)
    await tx
      .insertInto('day_job')
      .values(fresh.slice(at, at + AT_ONCE))
      .execute();
  for (const place of before.keys())
    await tx.deleteFrom('day_job').where('garden', '=', garden).where('place', '=', place).execute();
  return waiting;
}
