import { fail, ok, type Result } from '@sorrel/engine/derivation';
import { type Backup, type BackupPlan, backup } from '../backup/backup.ts';
import type { DatabaseKind } from '../database/database.ts';
import { createDays } from '../days/days.ts';
import type { Days } from '../days/types.ts';
import { problem } from '../problems.ts';
import { type Assembled, assembleRecord } from '../record/assemble.ts';
import type { GardenRecord } from '../record/record.ts';
import type { Numbered, Thing } from '../record/things.ts';
import { type Imported, readExport } from '../transfer/read-export.ts';
import { type ExportOptions, writeExport } from '../transfer/write-export.ts';
import { append, type Receipt } from './append.ts';
import { type Checked, check } from './check.ts';
import { type GardenLine, gardens } from './gardens.ts';
import { guarded } from './guard.ts';
import { historyOf } from './history.ts';
import { openDatabase } from './open.ts';
import { type Photo, photo, putPhoto } from './photos.ts';
import { createRecords } from './records.ts';
import { type Undone, type UndoRequest, undo } from './undo.ts';

/**
 * The record of gardens. Everything that can go wrong outside the program comes back as problems; nothing is kept in
 * part. A receipt means that the entry is on the disk.
 */
export interface Store {
  readonly kind: DatabaseKind;
  /** The file, or the address without its password. */
  readonly where: string;
  /**
   * Stores entries, all or none. Sending one again is harmless (`fresh: false`); the same id with something else in it
   * is refused with `store.same-id`.
   *
   * @param entries each an `Entry` as the client sent it; checked here
   */
  append(entries: readonly unknown[]): Promise<Result<Receipt[]>>;
  /** Takes back the last entry of a person in a garden that still counts. Take an undo back with an `undo` entry. */
  undo(request: UndoRequest): Promise<Result<Undone>>;
  /** All gardens that stand, by name. */
  gardens(): Promise<Result<GardenLine[]>>;
  /** Number of a garden's newest entry: as long as it stays, nothing in the garden has changed. 0: no such garden. */
  version(garden: string): Promise<Result<number>>;
  /** Entries after a number, in the order of arrival, removed and taken back ones included. */
  entries(garden: string, after?: number): Promise<Result<readonly Numbered[]>>;
  /** What stands in a garden now, in the order in which it was added. See `thingsOfKind`. */
  things(garden: string): Promise<Result<readonly Thing[]>>;
  /** Every entry about one thing: its first, corrections, removals, and what took them back. */
  history(garden: string, thing: string): Promise<Result<readonly Numbered[]>>;
  /** The garden as a garden document for `readGarden`, and which thing each part came from. */
  assemble(garden: string): Promise<Result<Assembled>>;
  /** Stores a photo; an entry can then show it by its hash. */
  putPhoto(type: string, bytes: Uint8Array): Promise<Result<{ readonly hash: string }>>;
  photo(hash: string): Promise<Result<Photo | undefined>>;
  /** The whole garden as one JSON text (`docs/garden-export.md`). */
  exportGarden(garden: string, options?: ExportOptions): Promise<Result<string>>;
  importGarden(text: string): Promise<Result<Imported>>;
  /** Soil days: plans their samples, each once. */
  readonly days: Days;
  /** Makes the backup of a day now, unless it is there (SQLite only). */
  backup(plan: BackupPlan, day: string): Promise<Result<Backup>>;
  /** Checks everything that is stored. */
  check(): Promise<Result<Checked>>;
  close(): Promise<void>;
}

export interface StoreOptions {
  /** Seconds after which another machine may take over a sample of a soil day (PostgreSQL only); default 120. */
  readonly patience?: number;
  /** Backups before the first change of each day (SQLite only). */
  readonly backups?: BackupPlan & {
    /** What day it is, ISO 8601. */
    readonly today: () => string;
    /** Hears of each backup made, and of each that failed; a failed backup does not stop the work. */
    readonly told: (result: Result<Backup>) => void;
  };
}

/**
 * Opens the store and brings its tables up to date.
 *
 * @param where the name of a SQLite file, made when it is not there, or a `postgres:` address
 */
export async function openStore(where: string, options: StoreOptions = {}): Promise<Result<Store>> {
  const opened = await openDatabase(where);
  if (!opened.ok) return opened;
  const database = opened.value;
  const records = createRecords();
  const days = createDays(database, options.patience);
  const daily = dailyBackup(options, (plan, day) => backup(database, plan, day));
  const read = async <T>(garden: string, say: (record: GardenRecord) => T): Promise<Result<T>> => {
    const record = await guarded(database, (db) => records.read(db, garden));
    if (!record.ok) return record;
    return record.value.version === 0 ? fail(problem('store.no-garden', 'garden', garden)) : ok(say(record.value));
  };
  return ok({
    kind: database.kind,
    where: database.where,
    async append(entries) {
      await daily();
      return append(database, records, entries);
    },
    async undo(request) {
      await daily();
      return undo(database, records, request);
    },
    gardens: () => gardens(database, records),
    version: (garden) =>
      guarded(database, async (db) => {
        if (database.version !== undefined) return database.version(garden);
        const row = await db.selectFrom('garden').select('version').where('id', '=', garden).executeTakeFirst();
        return row?.version ?? 0;
      }),
    entries: (garden, after = 0) => read(garden, (record) => record.entries.slice(after, record.version)),
    things: (garden) => read(garden, (record) => record.standing()),
    history: (garden, thing) => read(garden, (record) => historyOf(record.entries.slice(0, record.version), thing)),
    async assemble(garden) {
      const assembled = await read(garden, assembleRecord);
      if (!assembled.ok) return assembled;
      return assembled.value === undefined ? fail(problem('store.no-garden', 'garden', garden)) : ok(assembled.value);
    },
    async putPhoto(type, bytes) {
      await daily();
      return putPhoto(database, type, bytes);
    },
    photo: (hash) => photo(database, hash),
    exportGarden: (garden, how) => writeExport(database, records, garden, how),
    async importGarden(text) {
      await daily();
      return readExport(database, records, text);
    },
    backup: (plan, day) => backup(database, plan, day),
    days,
    check: () => check(database),
    async close() {
      await days.close();
      await database.close();
    },
  });
}

/** Backs up once a day, before the first change of that day; those who come meanwhile wait for the same backup. */
function dailyBackup(
  { backups }: StoreOptions,
  make: (plan: BackupPlan, day: string) => Promise<Result<Backup>>,
): () => Promise<void> {
  let day = '';
  let running: Promise<void> = Promise.resolve();
  return () => {
    if (backups === undefined) return running;
    const today = backups.today();
    if (today !== day) {
      day = today;
      running = make(backups, today).then(backups.told);
    }
    return running;
  };
}
