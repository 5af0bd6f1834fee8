import { ok, type Result } from '@sorrel/engine/derivation';
import type { Transaction } from 'kysely';
import type { Database } from '../database/database.ts';
import type { Tables } from '../database/tables.ts';
import { canonical } from '../entry/canonical.ts';
import { checkEntry } from '../entry/check-entry.ts';
import type { Entry } from '../entry/entry.ts';
import { problem, Refusal } from '../problems.ts';
import type { Numbered } from '../record/things.ts';
import { fits } from './fits.ts';
import { inTransaction } from './guard.ts';
import type { Records } from './records.ts';

/** That an entry is stored, on the disk. */
export interface Receipt {
  readonly id: string;
  readonly garden: string;
  /** Its number in the garden's record. */
  readonly number: number;
  /** False when the store already had it: it was sent again. */
  readonly fresh: boolean;
}

/** Stores entries in the order given, all of them or none. */
export async function append(
  database: Database,
  records: Records,
  typed: readonly unknown[],
): Promise<Result<Receipt[]>> {
  const entries: Entry[] = [];
  for (const each of typed) {
    const checked = checkEntry(each);
    if (!checked.ok) return checked;
    entries.push(checked.value);
  }
  if (entries.length === 0) return ok([]);
  return appendChecked(database, records, entries);
}

/**
 * Stores entries that have passed `checkEntry`.
 *
 * @param before runs first in the same transaction
 */
export async function appendChecked(
  database: Database,
  records: Records,
  entries: readonly Entry[],
  before: (tx: Transaction<Tables>) => Promise<void> = async () => undefined,
): Promise<Result<Receipt[]>> {
  const result = await inTransaction(database, async (tx) => {
    await before(tx);
    // Always in one order, so that two writers with several gardens cannot wait for each other.
    const gardens = [...new Set(entries.map((entry) => entry.garden))].sort();
    const writers = new Map<string, GardenWriter>();
    for (const garden of gardens) writers.set(garden, await openGarden(tx, records, garden, entries));
    const receipts: Receipt[] = [];
    for (const entry of entries) {
      const writer = writers.get(entry.garden);
      if (writer !== undefined) receipts.push(await writer.put(entry));
    }
    for (const writer of writers.values()) await writer.finish();
    return { receipts, added: [...writers].map(([garden, writer]) => ({ garden, entries: writer.added })) };
  });
  if (!result.ok) return result;
  for (const { garden, entries: added } of result.value.added) records.committed(garden, added);
  return ok(result.value.receipts);
}

export interface GardenWriter {
  readonly added: readonly Numbered[];
  put(entry: Entry): Promise<Receipt>;
  finish(): Promise<void>;
}

/** Locks a garden for this transaction and readies it for more entries. Makes it when its first entry is among them. */
async function openGarden(
  tx: Transaction<Tables>,
  records: Records,
  garden: string,
  coming: readonly Entry[],
): Promise<GardenWriter> {
  if (!(await lockGarden(tx, garden))) {
    const first = coming.find((entry) => entry.garden === garden && entry.action === 'add' && entry.kind === 'garden');
    if (first === undefined) throw new Refusal(problem('store.no-garden', 'garden', garden));
    await tx
      .insertInto('garden')
      .values({ id: garden, version: 0 })
      .onConflict((conflict) => conflict.column('id').doNothing())
      .execute();
    await lockGarden(tx, garden);
  }
  const record = await records.read(tx, garden);
  const added: Numbered[] = [];
  const addedById = new Map<string, Numbered>();
  const find = (id: string) => addedById.get(id) ?? record.byId.get(id);
  return {
    added,
    async put(entry) {
      const { id } = entry;
      const same = find(id);
      if (same !== undefined) {
        if (canonical(same.entry) !== canonical(entry)) throw new Refusal(problem('store.same-id', 'id', id));
        return { id, garden, number: same.number, fresh: false };
      }
      const elsewhere = await tx.selectFrom('entry').select('garden').where('id', '=', id).executeTakeFirst();
      if (elsewhere !== undefined) throw new Refusal(problem('store.same-id', 'id', id));
      await fits(entry, { tx, find, entries: () => [...record.entries.slice(0, record.version), ...added] });
      const number = record.version + added.length + 1;
      await insertEntry(tx, { garden, number, id, body: JSON.stringify(entry) });
      const numbered = { number, entry };
      added.push(numbered);
      addedById.set(id, numbered);
      return { id, garden, number, fresh: true };
    },
    async finish() {
      if (added.length > 0)
        await tx
          .updateTable('garden')
          .set({ version: record.version + added.length })
          .where('id', '=', garden)
          .execute();
    },
  };
}

/** @throws Refusal when the same id came in with another garden at this very moment */
async function insertEntry(tx: Transaction<Tables>, row: Tables['entry']): Promise<void> {
  try {
    await tx.insertInto('entry').values(row).execute();
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    if (code === '23505' || code === 'SQLITE_CONSTRAINT_UNIQUE')
      throw new Refusal(problem('store.same-id', 'id', row.id));
    throw error;
  }
}

/** Holds the garden's row until the transaction ends. */
export async function lockGarden(tx: Transaction<Tables>, garden: string): Promise<boolean> {
  const locked = await tx
    .updateTable('garden')
    .set((row) => ({ version: row.ref('version') }))
    .where('id', '=', garden)
    .returning('id')
    .executeTakeFirst();
  return locked !== undefined;
}
