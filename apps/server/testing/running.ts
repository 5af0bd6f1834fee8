import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { ServerOptions } from '../src/options.ts';
import { type Instead, type RunningServer, startServer } from '../src/start-server.ts';
import { type Asked, asking } from './asking.ts';

export const demoFolder = fileURLToPath(new URL('../../../demo', import.meta.url));
/** The day on which tests take place. */
export const today = '2026-11-25';

export interface Running extends RunningServer {
  readonly folder: string;
  /** Lines of the log so far. */
  readonly lines: readonly string[];
  /** Sends a request and holds the answer against the description of the API. */
  ask: Asked;
}

/** A server of its own on a free port, with a log that is kept. `stop` also removes its folder. */
export async function running(options: ServerOptions = {}, instead: Instead = {}): Promise<Running> {
  const folder = mkdtempSync(join(tmpdir(), 'sorrel-server-'));
  const lines: string[] = [];
  const server = await startServer(
    { port: 0, dataFolder: folder, ...options },
    { logTo: { write: (line) => void lines.push(line) }, now: () => Date.parse(`${today}T12:00:00Z`), ...instead },
  );
  return {
    ...server,
    folder,
    lines,
    ask: asking(server.address),
    async stop() {
      await server.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
