import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { answersPerSecond } from './load.ts';
import { median } from './measure.ts';

export interface PlaceReading {
  /** Answers a second. */
  readonly ours: number;
  readonly bare: number;
  /** Ours as a share of the bare framework's; the bound is 0.5. */
  readonly share: number;
  /** Length of the answer, bytes. */
  readonly size: number;
}

/** Starts a server in a process of its own and waits for the address it prints. */
export function started(args: readonly string[], env: Record<string, string> = {}): Promise<[string, ChildProcess]> {
  const child = spawn(process.execPath, args, {
    stdio: ['ignore', 'pipe', 'ignore'],
    env: { ...process.env, ...env },
  });
  return new Promise((resolve, reject) => {
    let said = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      said += text;
      const address = /(http:\S+)\n/.exec(said)?.[1];
      if (address !== undefined) resolve([address, child]);
    });
    child.on('exit', (code) => reject(new Error(`the server ended with ${code} before it listened`)));
  });
}

/** The framework alone: no checks, no log, no record, one constant. */
const bareServer = (body: string) => `
  const { Hono } = await import('hono');
  const { serve } = await import('@hono/node-server');
  const body = ${JSON.stringify(body)};
  const app = new Hono();
  app.get('/api/gardens/:garden/places/:place', (c) => c.body(body, 200, { 'content-type': 'application/json; charset=utf-8' }));
  serve({ fetch: app.fetch, port: 0, hostname: '127.0.0.1' }, ({ port }) => console.log('http://127.0.0.1:' + port));
`;

/**
 * Reading one place of a demo garden, with everything a request goes through (host check, log line, headers, the
 * record's version), against the bare framework that answers with a constant of the same size. In turns, in one run.
 * Needs the built server.
 */
export async function placeReading(rounds = 5, ms = 2000): Promise<PlaceReading> {
  const folder = mkdtempSync(join(tmpdir(), 'sorrel-bench-server-'));
  const running: ChildProcess[] = [];
  try {
    const [ours, child] = await started(['apps/server/dist/server.mjs'], {
      PORT: '0',
      SORREL_DATA: folder,
      SORREL_LOG: 'info',
      DATABASE_URL: '',
      HOST: '',
    });
    running.push(child);
    const { gardens } = (await (await fetch(`${ours}/api/gardens`)).json()) as { gardens: { id: string }[] };
    const garden = `/api/gardens/${gardens[0]?.id}`;
    const { from } = (await (await fetch(`${ours}${garden}`)).json()) as { from: { places: { id: string }[] } };
    const path = `${garden}/places/${from.places[0]?.id}`;
    const body = await (await fetch(`${ours}${path}`)).text();
    const [bare, other] = await started(['--input-type=module', '-e', bareServer(body)]);
    running.push(other);
    const speeds: { ours: number; bare: number }[] = [];
    for (let round = 0; round <= rounds; round++) {
      const order = round % 2 === 0 ? (['ours', 'bare'] as const) : (['bare', 'ours'] as const);
      const speed = { ours: 0, bare: 0 };
      for (const one of order) speed[one] = await answersPerSecond((one === 'ours' ? ours : bare) + path, ms);
      // The first round only warms up.
      if (round > 0) speeds.push(speed);
    }
    return {
      ours: median(speeds.map((speed) => speed.ours)),
      bare: median(speeds.map((speed) => speed.bare)),
      share: median(speeds.map((speed) => speed.ours / speed.bare)),
      size: Buffer.byteLength(body),
    };
  } finally {
    for (const child of running) child.kill();
    await Promise.all(running.map((child) => child.exitCode ?? new Promise((resolve) => child.once('exit', resolve))));
    rmSync(folder, { recursive: true, force: true });
  }
}
