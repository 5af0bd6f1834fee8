import { openStore, type Store } from '../src/index.ts';
import { entryOf, gardenOf, partFrom } from './work.ts';

export interface Findings {
  /** Number with which the next writer goes on. */
  readonly next: number;
  /** What is wrong; nothing when all that was acknowledged is there and sound. */
  readonly faults: readonly string[];
}

/**
 * Opens the store again and compares it with what was acknowledged: all of it is there, unchanged; beyond it at most
 * one whole part that was on its way; and sending that part again does no harm.
 */
export async function inspect(
  where: string,
  seed: number,
  acknowledged: readonly number[],
  photos: readonly string[],
): Promise<Findings> {
  const opened = await openStore(where);
  if (!opened.ok) return { next: 0, faults: opened.problems.map((each) => `cannot open: ${each.message}`) };
  const store = opened.value;
  try {
    return await inspectStore(store, seed, acknowledged, photos);
  } finally {
    await store.close();
  }
}

async function inspectStore(
  store: Store,
  seed: number,
  acknowledged: readonly number[],
  photos: readonly string[],
): Promise<Findings> {
  const faults: string[] = [];
  const checked = await store.check();
  if (!checked.ok || checked.value.problems.length > 0)
    faults.push(...(checked.ok ? checked.value.problems : checked.problems).map((each) => each.message));
  const next = Math.max(-1, ...acknowledged) + 1;
  const inFlight = partFrom(seed, next);
  const stored = await store.entries(gardenOf(seed));
  const entries = stored.ok ? stored.value : [];
  if (!stored.ok && acknowledged.length > 0) faults.push(...stored.problems.map((each) => each.message));
  for (const number of acknowledged)
    if (JSON.stringify(entries[number]?.entry) !== JSON.stringify(entryOf(seed, number)))
      faults.push(`entry ${number} was acknowledged and is ${entries[number] === undefined ? 'missing' : 'changed'}`);
  const beyond = entries.length - next;
  if (beyond !== 0 && beyond !== inFlight.length) faults.push(`${beyond} of a part of ${inFlight.length} entries`);
  for (const hash of photos) {
    const photo = await store.photo(hash);
    if (!photo.ok || photo.value === undefined) faults.push(`photo ${hash} was acknowledged and is missing`);
  }
  const again = await store.append(inFlight.map((number) => entryOf(seed, number)));
  if (!again.ok) faults.push(...again.problems.map((each) => `sending again: ${each.message}`));
  else if (again.value.some((receipt) => receipt.fresh === beyond > 0)) faults.push('sent again, it was stored twice');
  return { next: next + inFlight.length, faults };
}
