import type { Transaction } from 'kysely';
import type { Tables } from '../database/tables.ts';
import type { Claimed, Delivery } from './delivery.ts';
import type { Came } from './types.ts';

/** How often planning a sample may fail before it is given up. */
const MOST_TRIES = 3;
/** Longest reason that is kept. */
const LONGEST = 1000;

const own = (tx: Transaction<Tables>, { garden, place, claim }: Claimed, set: Partial<Tables['day_job']>) =>
  tx
    .updateTable('day_job')
    .set({ claim: null, ...set })
    .where('garden', '=', garden)
    .where('place', '=', place)
    .where('claim', '=', claim)
    .where('state', '=', 'running')
    .returning('tries')
    .executeTakeFirst();

/** Stores what came of a sample, unless somebody else has taken it over meanwhile. */
export async function handBack(
  tx: Transaction<Tables>,
  delivery: Delivery,
  claimed: Claimed,
  made: { readonly source: string; readonly body: string } | undefined,
): Promise<Came> {
  const { garden, place } = claimed;
  if (made === undefined) {
    // Only its own row: meanwhile the sample may have come back and wait for somebody else.
    if ((await own(tx, claimed, {})) === undefined) return 'late';
    await tx.deleteFrom('day_job').where('garden', '=', garden).where('place', '=', place).execute();
    await delivery.settle(tx, claimed);
    return 'gone';
  }
  const { source, body } = made;
  if ((await own(tx, claimed, { state: 'done', source, error: null })) === undefined) return 'late';
  // A plan from an older source gives way; there is never more than one.
  await tx.deleteFrom('day_result').where('garden', '=', garden).where('place', '=', place).execute();
  await tx.insertInto('day_result').values({ garden, place, source, body }).execute();
  await delivery.settle(tx, claimed);
  return 'done';
}

/** Notes that planning a sample failed. */
export async function handBackFailed(
  tx: Transaction<Tables>,
  delivery: Delivery,
  claimed: Claimed,
  error: unknown,
): Promise<Came> {
  const why = (error instanceof Error ? error.message : String(error)).slice(0, LONGEST);
  const { garden, place } = claimed;
  const row = await tx
    .selectFrom('day_job')
    .select('tries')
    .where('garden', '=', garden)
    .where('place', '=', place)
    .executeTakeFirst();
  const tries = (row?.tries ?? 0) + 1;
  const state = tries < MOST_TRIES ? 'waiting' : 'failed';
  if ((await own(tx, claimed, { state, tries, error: why })) === undefined) return 'late';
  if (state === 'failed') {
    await delivery.settle(tx, claimed);
    return 'failed';
  }
  await delivery.again(tx, claimed);
  return 'again';
}
