import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Database, DatabaseKind } from '../src/database/database.ts';
import { openPostgres } from '../src/database/postgres.ts';
import { openSqlite } from '../src/database/sqlite.ts';
import { openStore, type Store } from '../src/index.ts';
import { startPostgres, type TestServer } from '../testing/postgres.ts';
import { value } from './kit.ts';

/** One kind of database for a run of tests: makes places to store in, opens them, and clears up. */
export interface Bench {
  readonly kind: DatabaseKind;
  setUp(): Promise<void>;
  /** A place with nothing in it yet. */
  place(): Promise<string>;
  openAt(where: string): Promise<Store>;
  open(): Promise<Store>;
  /** The database itself, past the store. */
  raw(where: string): Database;
  /** Closes what a test opened. */
  closeAll(): Promise<void>;
  tearDown(): Promise<void>;
}

export function createBench(kind: DatabaseKind): Bench {
  let folder = '';
  let server: TestServer | undefined;
  let count = 0;
  let open: Store[] = [];
  const bench: Bench = {
    kind,
    async setUp() {
      // What survives a crash is asked elsewhere, so these may stay off the disk.
      const below = existsSync('/dev/shm') ? '/dev/shm' : tmpdir();
      if (kind === 'sqlite') folder = mkdtempSync(join(below, 'sorrel-store-'));
      else server = await startPostgres({ below, settings: { fsync: 'off' } });
    },
    async place() {
      count += 1;
      return server === undefined ? join(folder, `${count}.sqlite`) : server.database(`test_${count}`);
    },
    async openAt(where) {
      const store = value(await openStore(where, { patience: 1 }));
      open.push(store);
      return store;
    },
    open: async () => bench.openAt(await bench.place()),
    raw: (where) => (kind === 'sqlite' ? openSqlite(where) : openPostgres(where)),
    async closeAll() {
      for (const store of open) await store.close().catch(() => undefined);
      open = [];
    },
    async tearDown() {
      await bench.closeAll();
      await server?.stop();
      if (folder !== '') rmSync(folder, { recursive: true, force: true });
    },
  };
  return bench;
}
