import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { startPostgres } from '../testing/postgres.ts';
import type { Target } from './rounds.ts';

export interface Targets {
  readonly targets: readonly Target[];
  stop(): Promise<void>;
}

/** SQLite with its writer killed; PostgreSQL with its writer killed; PostgreSQL with the server killed. */
export async function makeTargets(): Promise<Targets> {
  const folder = mkdtempSync(join(tmpdir(), 'sorrel-torture-'));
  const server = await startPostgres();
  let count = 0;
  async function database(): Promise<string> {
    count += 1;
    const url = await server.database(`torture_${count}`);
    // Lets the store's own check look into every page and index.
    const client = new pg.Client({ connectionString: url });
    await client.connect();
    await client.query('create extension if not exists amcheck');
    await client.end();
    return url;
  }
  async function killServer(): Promise<void> {
    await server.kill();
    await server.restart();
  }
  return {
    targets: [
      {
        name: 'SQLite, writer killed',
        place: async () => {
          count += 1;
          return join(folder, `${count}.sqlite`);
        },
      },
      { name: 'PostgreSQL, writer killed', place: database },
      { name: 'PostgreSQL, server killed', place: database, killServer },
    ],
    async stop() {
      await server.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
