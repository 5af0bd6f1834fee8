import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { emptyDatabase, stopPostgres } from '../testing/postgres-once.ts';
import { demoFolder } from '../testing/running.ts';

const main = fileURLToPath(new URL('../src/main.ts', import.meta.url));
const demo = parse(readFileSync(`${demoFolder}/sour-ground-heavy-rain.yaml`, 'utf8'));
const codes = Array.from({ length: 12 }, (_, index) => `A${index + 1}`);
const document = {
  ...demo,
  garden: 'Soil day',
  soilDay: { date: '2026-11-21' },
  places: codes.map((code, index) => ({ ...demo.places[index % demo.places.length], name: code, sample: { code } })),
};

interface Program {
  readonly address: string;
  /** Codes of the samples it has planned so far, by its log. */
  planned(): readonly string[];
  kill(): Promise<void>;
}

const running: ChildProcess[] = [];
afterEach(() => {
  for (const child of running.splice(0)) child.kill('SIGKILL');
});
afterAll(stopPostgres);

/** The server in a process of its own. */
async function start(folder: string, database = ''): Promise<Program> {
  const env = { ...process.env, PORT: '0', SORREL_DATA: folder, SORREL_LOG: 'info', DATABASE_URL: database };
  const child = spawn(process.execPath, ['--import', 'tsx', main], { env, stdio: ['ignore', 'pipe', 'pipe'] });
  running.push(child);
  let log = '';
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    log += text;
  });
  const address = await new Promise<string>((resolve, reject) => {
    let said = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      said += text;
      const found = /(http:\S+)\n/.exec(said)?.[1];
      if (found !== undefined) resolve(found);
    });
    child.on('exit', (code) => reject(new Error(`the server ended with ${code}: ${log}`)));
  });
  return {
    address,
    planned: () => [...log.matchAll(/"code":"(\w+)","came":"done"/g)].map(([, code = '']) => code),
    kill: () =>
      new Promise((resolve) => {
        child.on('close', () => resolve());
        child.kill('SIGKILL');
      }),
  };
}

interface Answer {
  readonly id: string;
  readonly done: number;
  readonly failed: number;
}

async function json(address: string, method = 'GET', body?: unknown): Promise<Answer> {
  const sent =
    body === undefined ? {} : { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) };
  return (await (await fetch(address, { method, ...sent })).json()) as Answer;
}

async function begin({ address }: Program): Promise<string> {
  const { id } = await json(`${address}/api/gardens`, 'POST', { by: 'anna', document });
  const path = `/api/gardens/${id}/day`;
  await json(`${address}${path}/plan`, 'POST', { asOf: '2026-11-25' });
  return path;
}

async function until(address: string, path: string, enough: (done: number) => boolean): Promise<void> {
  for (let left = 1200; left > 0; left--) {
    const { done, failed } = await json(`${address}${path}`);
    expect(failed).toBe(0);
    if (enough(done)) return;
    await setTimeout(50);
  }
  throw new Error('the day does not come to its end');
}

const sorted = (list: readonly string[]) => [...list].sort();

describe('a soil day whose server is killed', () => {
  it('plans each sample once, and no handout is missing', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'sorrel-day-'));
    try {
      let server = await start(folder);
      const path = await begin(server);
      const planned: string[] = [];
      for (const enough of [1, 4, 7]) {
        await until(server.address, path, (done) => done >= enough);
        await server.kill();
        planned.push(...server.planned());
        server = await start(folder);
      }
      await until(server.address, path, (done) => done === codes.length);
      await setTimeout(200);
      planned.push(...server.planned());
      // What was logged just before a kill may never leave the process, so the log tells only that none came twice;
      // that none is missing, the papers tell.
      expect(planned.length).toBeGreaterThan(0);
      expect(planned.length).toBe(new Set(planned).size);
      const merge = await (await fetch(`${server.address}${path}/merge.csv`)).text();
      expect(
        merge
          .trim()
          .split('\r\n')
          .slice(1)
          .map((row) => row.split(',')[0]),
      ).toEqual(codes);
      for (const code of codes) expect((await fetch(`${server.address}${path}/handouts/${code}.pdf`)).status).toBe(200);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  it('is shared by two servers on one PostgreSQL, no sample planned by both', async () => {
    const [folder, database] = [mkdtempSync(join(tmpdir(), 'sorrel-day-')), await emptyDatabase()];
    try {
      const one = await start(join(folder, 'one'), database);
      const two = await start(join(folder, 'two'), database);
      const path = await begin(one);
      await until(two.address, path, (done) => done === codes.length);
      await setTimeout(200);
      expect(one.planned().length).toBeGreaterThan(0);
      expect(two.planned().length).toBeGreaterThan(0);
      expect(sorted([...one.planned(), ...two.planned()])).toEqual(sorted(codes));
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
