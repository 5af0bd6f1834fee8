import { fail, ok, type Result } from '@sorrel/engine/derivation';
import type { Database } from '../database/database.ts';
import { checkEntry } from '../entry/check-entry.ts';
import type { UndoEntry } from '../entry/entry.ts';
import { problem } from '../problems.ts';
import { takenBack } from '../record/things.ts';
import { appendChecked, type Receipt } from './append.ts';
import { guarded } from './guard.ts';
import type { Records } from './records.ts';

/** Which garden, who takes back, and the id and time of the entry that will say so. */
export type UndoRequest = Pick<UndoEntry, 'id' | 'garden' | 'by' | 'at'>;

export interface Undone extends Receipt {
  /** Id of the entry that was taken back. */
  readonly entry: string;
}

/** Takes back the last entry of a person in a garden that still counts. */
export async function undo(database: Database, records: Records, request: UndoRequest): Promise<Result<Undone>> {
  const { id, garden, by, at } = request;
  const read = await guarded(database, (db) => records.read(db, garden));
  if (!read.ok) return read;
  const record = read.value;
  if (record.version === 0) return fail(problem('store.no-garden', 'garden', garden));
  const before = record.byId.get(id)?.entry;
  const gone = takenBack(record.entries);
  const last =
    before === undefined
      ? record.entries.findLast(({ entry }) => entry.by === by && entry.action !== 'undo' && !gone.has(entry.id))?.entry
          .id
      : before.action === 'undo'
        ? before.entry
        : before.id;
  if (last === undefined) return fail(problem('store.nothing-to-undo', 'by', by));
  const entry = checkEntry({ id, garden, by, at, action: 'undo', entry: last });
  if (!entry.ok) return entry;
  const stored = await appendChecked(database, records, [entry.value]);
  if (!stored.ok) return stored;
  const [receipt] = stored.value;
  return receipt === undefined ? fail(problem('store.nothing-to-undo', 'by', by)) : ok({ ...receipt, entry: last });
}
