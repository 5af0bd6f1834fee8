import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { connect, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { newId } from '@sorrel/store';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { optionsFrom, usualPort } from '../src/options.ts';
import { startServer } from '../src/start-server.ts';
import { postgres, stopPostgres } from '../testing/postgres-once.ts';
import { demoFolder, type Running, running } from '../testing/running.ts';

afterAll(stopPostgres);

describe('the log', () => {
  let server: Running;
  beforeAll(async () => {
    server = await running();
  });
  afterAll(() => server?.stop());

  it('is one JSON object a line: time, level, route, status, but nothing that was sent', async () => {
    const garden = newId(0);
    const secret = 'My very private back yard';
    await server.ask('POST', '/api/gardens', {
      by: 'anna-the-gardener',
      id: garden,
      document: { garden: secret, places: [] },
    });
    await server.ask('POST', '/api/gardens', { by: 'anna-the-gardener', document: { garden: 7 } });
    await server.ask('GET', `/api/gardens/${garden}/plan?asOf=${encodeURIComponent(secret)}`);
    await server.ask('DELETE', `/api/gardens/${garden}?by=anna-the-gardener`);
    const lines = server.lines.map((line) => JSON.parse(line));
    const requests = lines.filter((line) => line.msg === 'request' && line.route.startsWith('/api/gardens'));
    expect(requests.map(({ method, route, status }) => [method, route, status])).toEqual([
      ['POST', '/api/gardens', 201],
      ['POST', '/api/gardens', 422],
      ['GET', '/api/gardens/:garden/plan', 422],
      ['DELETE', '/api/gardens/:garden', 200],
    ]);
    for (const line of lines) expect(new Date(line.time).toISOString()).toBe(line.time);
    const all = server.lines.join('');
    for (const sent of [secret, 'private', 'anna-the-gardener', garden]) expect(all).not.toContain(sent);
  });
});

describe('the invented gardens', () => {
  it('stand in an empty record and are marked; removed, they stay away', async () => {
    const server = await running({ demoFolder });
    const { gardens } = (await server.ask('GET', '/api/gardens')).body;
    expect(gardens).toHaveLength(4);
    for (const { id, name, invented } of gardens) {
      expect([invented, name]).toEqual([true, expect.stringMatching(/^Invented/)]);
      expect((await server.ask('DELETE', `/api/gardens/${id}?by=anna`)).status).toBe(200);
    }
    await server.ask('POST', '/api/gardens', { by: 'anna', document: { garden: 'Mine', places: [] } });
    const again = await startServer({ port: 0, dataFolder: server.folder, demoFolder, logLevel: 'silent' });
    const left: unknown = await (await fetch(`${again.address}/api/gardens`)).json();
    expect(left).toMatchObject({ gardens: [{ name: 'Mine', invented: false }] });
    await again.stop();
    await server.stop();
  });
});

describe('health', () => {
  it('is bad while the database is gone, and writing says so too; then all is well again', async () => {
    const cluster = await postgres();
    const server = await running({ databaseUrl: await cluster.database('health') });
    expect((await server.ask('GET', '/api/health')).status).toBe(200);
    const garden = newId(0);
    const at = '2026-11-20T09:30:00Z';
    const entry = { id: garden, garden, by: 'anna', at, action: 'add', kind: 'garden', content: { garden: 'Yard' } };
    await cluster.kill();
    const { status, body } = await server.ask('GET', '/api/health');
    expect([status, body.type]).toEqual([503, '/api/problems#no-database']);
    for (const together of [true, false]) {
      const answer = await server.ask('POST', `/api/gardens/${garden}/entries`, { together, entries: [entry] });
      expect([together, answer.status]).toEqual([together, 503]);
    }
    await cluster.restart();
    expect((await server.ask('POST', `/api/gardens/${garden}/entries`, { entries: [entry] })).status).toBe(200);
    expect((await server.ask('GET', '/api/health')).status).toBe(200);
    await server.stop();
  });
});

describe('stopping', () => {
  it('lets a request under way finish, takes no new one, and then closes', async () => {
    const server = await running();
    const garden = newId(0);
    const body = JSON.stringify({ by: 'anna', id: garden, document: { garden: 'Slow line', places: [] } });
    const socket = connect(server.port, '127.0.0.1');
    await once(socket, 'connect');
    socket.write(
      `POST /api/gardens HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: application/json\r\nContent-Length: ${body.length}\r\n\r\n${body.slice(0, 9)}`,
    );
    // An answered question after it shows that the first half has arrived.
    await server.ask('GET', '/api/health');
    const stopped = server.stop();
    socket.write(body.slice(9));
    let answer = '';
    for await (const part of socket.setEncoding('utf8')) answer += part;
    expect(answer).toMatch(/^HTTP\/1\.1 201 /);
    expect(answer).toMatch(/\r\nconnection: close\r\n/i);
    await stopped;
    await expect(fetch(`${server.address}/api/health`)).rejects.toThrow();
  });
});

describe('the address', () => {
  it('is this computer only, at the usual port or the next free one', async () => {
    const blocker = createServer();
    const taken = await new Promise<boolean>((resolve) => {
      blocker.once('error', () => resolve(true));
      blocker.listen(usualPort, '127.0.0.1', () => resolve(false));
    });
    const folder = mkdtempSync(join(tmpdir(), 'sorrel-port-'));
    const server = await startServer({ dataFolder: folder, logLevel: 'silent' });
    expect(server.port).toBeGreaterThan(usualPort);
    expect(server.address).toBe(`http://127.0.0.1:${server.port}`);
    const chosen = startServer({ dataFolder: folder, port: server.port, logLevel: 'silent' });
    await expect(chosen).rejects.toThrow(`Port ${server.port} is taken`);
    await server.stop();
    if (!taken) blocker.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it('on a network comes with a warning', async () => {
    const server = await running({ host: '0.0.0.0' });
    const warnings = server.lines.map((line) => JSON.parse(line)).filter(({ level }) => level === 'warn');
    expect(warnings.map(({ msg }) => msg)).toEqual([expect.stringContaining('everyone who reaches this computer')]);
    await server.stop();
  });

  it('says in a sentence that the record cannot be opened', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'sorrel-broken-'));
    writeFileSync(join(folder, 'sorrel.sqlite'), 'x'.repeat(5000));
    await expect(startServer({ dataFolder: folder, port: 0, logLevel: 'silent' })).rejects.toThrow(
      /damaged|another program/,
    );
    rmSync(folder, { recursive: true, force: true });
  });
});

describe('options', () => {
  it('come from the environment', () => {
    expect(optionsFrom({}, '/home/anna')).toEqual({ dataFolder: '/home/anna/sorrel-data' });
    expect(
      optionsFrom(
        {
          HOST: '0.0.0.0',
          PORT: '8080',
          DATABASE_URL: 'postgres://x/y',
          SORREL_DATA: 'here',
          SORREL_HOSTS: 'a.example, b.example',
          SORREL_ADDRESS: 'https://a.example/',
          SORREL_LOG: 'warn',
        },
        '/home/anna',
      ),
    ).toEqual({
      host: '0.0.0.0',
      port: 8080,
      databaseUrl: 'postgres://x/y',
      dataFolder: '/home/anna/here',
      hosts: ['a.example', 'b.example'],
      publicAddress: 'https://a.example',
      logLevel: 'warn',
    });
    for (const PORT of ['eighty', '-1', '70000', '80.5']) expect(() => optionsFrom({ PORT }, '/')).toThrow(/PORT/);
    expect(() => optionsFrom({ SORREL_ADDRESS: 'garden' }, '/')).toThrow(/SORREL_ADDRESS/);
  });
});

describe('the process', () => {
  it('prints where it is in one line and ends well on SIGTERM', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'sorrel-process-'));
    const main = fileURLToPath(new URL('../src/main.ts', import.meta.url));
    const child = spawn(process.execPath, ['--import', 'tsx', main], {
      env: { ...process.env, PORT: '0', SORREL_DATA: folder, DATABASE_URL: '', HOST: '' },
    });
    let said = '';
    for await (const part of child.stdout.setEncoding('utf8')) {
      said += part;
      const address = /^Sorrel is at (http:\/\/127\.0\.0\.1:\d+)\n$/.exec(said)?.[1];
      if (address === undefined) continue;
      expect((await fetch(`${address}/api/health`)).status).toBe(200);
      child.kill('SIGTERM');
    }
    const code = child.exitCode ?? (await once(child, 'exit'))[0];
    expect([code, said.split('\n').length]).toEqual([0, 2]);
    rmSync(folder, { recursive: true, force: true });
  });
});

describe('the pages', () => {
  let server: Running;
  const web = mkdtempSync(join(tmpdir(), 'sorrel-web-'));
  const script = `console.log(${JSON.stringify('grow '.repeat(1000))})`;
  beforeAll(async () => {
    mkdirSync(join(web, 'assets'));
    writeFileSync(join(web, 'index.html'), '<!doctype html><title>Sorrel</title>');
    writeFileSync(join(web, 'assets', 'index-a1B2c3D4.js'), script);
    writeFileSync(join(web, 'favicon.svg'), '<svg xmlns="http://www.w3.org/2000/svg"/>');
    writeFileSync(join(web, '..', 'sorrel-outside.txt'), 'not for you');
    server = await running({ webFolder: web });
  });
  afterAll(async () => {
    await server?.stop();
    rmSync(web, { recursive: true, force: true });
    rmSync(join(web, '..', 'sorrel-outside.txt'), { force: true });
  });
  const get = (path: string, headers: Record<string, string> = {}) => fetch(server.address + path, { headers });

  it.each(['/', '/g/01890a5d-ac96-774b-bcce-b302099a8057/place/x', '/index.html'])(
    '%s is the one page',
    async (path) => {
      const answer = await get(path);
      expect([answer.status, answer.headers.get('content-type')]).toEqual([200, 'text/html; charset=utf-8']);
      expect(answer.headers.get('cache-control')).toBe('no-cache');
      expect(await answer.text()).toContain('<title>Sorrel</title>');
      expect((await get(path, { 'if-none-match': answer.headers.get('etag') ?? '' })).status).toBe(304);
    },
  );

  it('keeps for ever what has a hash in its name, and squeezes it as the browser wishes', async () => {
    for (const [accepts, encoding] of [
      ['br, gzip', 'br'],
      ['gzip', 'gzip'],
      ['identity', null],
      ['br;q=0, gzip', 'gzip'],
    ] as const) {
      const answer = await get('/assets/index-a1B2c3D4.js', { 'accept-encoding': accepts });
      expect([accepts, answer.headers.get('content-encoding')]).toEqual([accepts, encoding]);
      expect(answer.headers.get('cache-control')).toBe('public, max-age=31536000, immutable');
      expect(answer.headers.get('vary')).toBe('accept-encoding');
      expect(await answer.text()).toBe(script);
    }
  });

  it('gives nothing that was not built', async () => {
    for (const path of [
      '/missing.js',
      '/../sorrel-outside.txt',
      '/%2e%2e/sorrel-outside.txt',
      '/..%2fsorrel-outside.txt',
    ]) {
      const answer = await get(path);
      expect([path, answer.status, await answer.text()]).toEqual([
        path,
        404,
        expect.not.stringContaining('not for you'),
      ]);
    }
  });
});

describe('the reference lists', () => {
  it('come with their sources and are not sent twice', async () => {
    const server = await running();
    for (const list of ['plants', 'materials', 'methods', 'climates']) {
      const { headers, body } = await server.ask('GET', `/api/reference/${list}`);
      expect(body.length).toBeGreaterThan(4);
      const held = { 'if-none-match': headers.get('etag') ?? '' };
      expect((await server.ask('GET', `/api/reference/${list}`, undefined, held)).status).toBe(304);
    }
    await server.stop();
  });
});
