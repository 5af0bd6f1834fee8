import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, preview } from 'vite';

const web = fileURLToPath(new URL('..', import.meta.url));
const server = fileURLToPath(new URL('../../server/dist/server.mjs', import.meta.url));

export interface Served {
  readonly url: string;
  readonly keeps: boolean;
  stop(): Promise<void>;
}

/** The real server on a fresh record where it is built; else the pages alone, with gardens kept in the page. */
export const serve = (): Promise<Served> => (existsSync(server) ? realServer() : pagesAlone());

async function realServer(): Promise<Served> {
  // The test runner says `test` here, and the pages would be built for development.
  process.env.NODE_ENV = 'production';
  await build({ root: web, logLevel: 'warn' });
  const data = mkdtempSync(join(tmpdir(), 'sorrel-e2e-'));
  const child = spawn(process.execPath, [server], {
    env: { ...process.env, PORT: '0', SORREL_DATA: data, DATABASE_URL: '', SORREL_LOG: 'warn' },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const url = await new Promise<string>((resolve, reject) => {
    let said = '';
    child.stdout.on('data', (piece: Buffer) => {
      said += piece.toString();
      const found = /http:\/\/[\w.[\]:]+/.exec(said)?.[0];
      if (found !== undefined) resolve(found);
    });
    child.on('exit', (code) => reject(new Error(`The server ended with ${code}: ${said}`)));
  });
  return {
    url: `${url}/`,
    keeps: true,
    async stop() {
      const ended = new Promise((resolve) => child.on('exit', resolve));
      child.kill('SIGTERM');
      await ended;
      rmSync(data, { recursive: true, force: true });
    },
  };
}

async function pagesAlone(): Promise<Served> {
  process.env.NODE_ENV = 'production';
  process.env.VITE_STORE = 'memory';
  const outDir = join(web, 'dist', 'alone');
  await build({ root: web, logLevel: 'warn', build: { outDir, chunkSizeWarningLimit: 2000 } });
  const served = await preview({ root: web, build: { outDir }, preview: { port: 0, host: '127.0.0.1' } });
  return {
    url: served.resolvedUrls?.local[0] ?? '',
    keeps: false,
    stop: () => served.close(),
  };
}
