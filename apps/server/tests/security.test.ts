import { hostname } from 'node:os';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hostsFor, isLoopback } from '../src/http/security.ts';
import { raw } from '../testing/raw.ts';
import { type Running, running } from '../testing/running.ts';

let server: Running;
beforeAll(async () => {
  server = await running({ hosts: ['garden.example'] });
});
afterAll(() => server?.stop());

const garden = '01890a5d-ac96-774b-bcce-b302099a8057';

describe('headers', () => {
  it.each(['/', '/api/gardens', '/api/nowhere', '/api/openapi.json', `/api/gardens/${garden}`])(
    'stand on the answer from %s',
    async (path) => {
      const { headers } = await raw(server.address, path);
      // OWASP HTTP Headers Cheat Sheet names these.
      expect(headers).toMatchObject({
        'x-content-type-options': 'nosniff',
        'x-frame-options': 'DENY',
        'referrer-policy': 'no-referrer',
        'cross-origin-opener-policy': 'same-origin',
        'cross-origin-resource-policy': 'same-origin',
      });
      const policy = String(headers['content-security-policy']).split('; ');
      expect(policy).toEqual(
        expect.arrayContaining([
          "default-src 'none'",
          "script-src 'self' 'wasm-unsafe-eval'",
          "style-src 'self'",
          "img-src 'self' blob: data:",
        ]),
      );
      // Leave to run WebAssembly gives none to scripts made of text (CSP 3, 6.1.10 `wasm-unsafe-eval`).
      expect(policy.join().replace("'wasm-unsafe-eval'", '')).not.toMatch(/unsafe|\*|https?:/);
      expect(Object.keys(headers).filter((name) => name.startsWith('access-control'))).toEqual([]);
      expect(headers['x-powered-by'] ?? headers.server).toBeUndefined();
    },
  );

  it('stand on a refusal too', async () => {
    const { status, headers } = await raw(server.address, '/', { host: 'evil.example' });
    expect([status, headers['x-content-type-options']]).toEqual([421, 'nosniff']);
  });
});

describe('the name asked for', () => {
  it.each(['127.0.0.1', 'localhost', '[::1]', 'LocalHost:99', 'garden.example'])('%s is answered', async (host) => {
    expect((await raw(server.address, '/api/health', { host })).status).toBe(200);
  });

  // DNS rebinding: a foreign name that points at this computer.
  it.each([
    'evil.example',
    'localhost.evil.example',
    '127.0.0.1.evil.example',
    '192.168.1.5',
    'evil.example:80',
    '[::2]',
  ])('%s is refused', async (host) => {
    const { status, headers, text } = await raw(server.address, '/api/gardens', { host });
    expect([status, headers['content-type']]).toEqual([421, expect.stringContaining('application/problem+json')]);
    expect(JSON.parse(text)).toMatchObject({ type: '/api/problems#wrong-host', status: 421 });
  });

  it('may be any of this computer when it serves a network', () => {
    const hosts = hostsFor('0.0.0.0', []);
    expect(hosts.has(hostname().toLowerCase()) && hosts.has('127.0.0.1')).toBe(true);
    expect(hosts.has('evil.example')).toBe(false);
    expect(['127.0.0.1', '::1', 'localhost', '0.0.0.0', '192.168.1.5'].map(isLoopback)).toEqual([
      true,
      true,
      true,
      false,
      false,
    ]);
  });
});

describe('pages of other sites', () => {
  const put = (headers: Record<string, string>) =>
    raw(server.address, '/api/gardens', { method: 'POST', 'content-type': 'application/json', body: '{}', ...headers });

  it('change nothing', async () => {
    for (const headers of [
      { origin: 'https://evil.example' },
      { origin: 'null' },
      { origin: `${server.address}0` },
      { 'sec-fetch-site': 'cross-site' },
      { 'sec-fetch-site': 'same-site' },
    ])
      expect([headers, (await put(headers)).status]).toEqual([headers, 403]);
  });

  it('are told apart from our own', async () => {
    for (const headers of [{}, { origin: server.address, 'sec-fetch-site': 'same-origin' }])
      expect((await put(headers)).status).toBe(422);
  });

  it('cannot send a form, which asks nobody for leave', async () => {
    for (const type of ['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data; boundary=x']) {
      const { status } = await put({ 'content-type': type });
      expect([type, status]).toEqual([type, 415]);
    }
    expect((await raw(server.address, '/api/gardens', { method: 'OPTIONS' })).headers.allow).toContain('POST');
  });
});

describe('what is sent', () => {
  const json = { 'content-type': 'application/json' };

  it('must be JSON', async () => {
    const { status, body } = await server.ask('POST', '/api/gardens', '{"by":', json);
    expect([status, body.type]).toEqual([400, '/api/problems#not-json']);
    expect((await server.ask('POST', '/api/gardens', '{}', { 'content-type': 'text/plain' })).status).toBe(415);
  });

  it('is limited and must be JSON on every route that takes JSON', async () => {
    const { paths } = JSON.parse((await raw(server.address, '/api/openapi.json')).text) as {
      paths: Record<string, Record<string, { requestBody?: { content: object } }>>;
    };
    const routes = Object.entries(paths).flatMap(([path, methods]) =>
      Object.entries(methods).flatMap(([method, { requestBody }]) =>
        requestBody !== undefined && 'application/json' in requestBody.content
          ? [[method.toUpperCase(), path.replace(/\{\w+\}/g, '01890a5d-ac96-774b-bcce-b302099a8057')] as const]
          : [],
      ),
    );
    expect(routes.length).toBeGreaterThan(5);
    // The largest that any of them takes is an import.
    const large = `{"by":"${'x'.repeat(65 * 1024 * 1024)}"}`;
    for (const [method, path] of routes) {
      const form = await server.ask(method, path, '{}', { 'content-type': 'text/plain' });
      expect([path, form.status]).toEqual([path, 415]);
      const long = await server.ask(
        method,
        path,
        path.includes('import') ? large : large.slice(-3 * 1024 * 1024),
        json,
      );
      expect([path, long.status]).toEqual([path, 413]);
    }
  });

  it('must have the fields of its kind', async () => {
    for (const body of [[], 7, null, { by: 'anna' }, { by: '', document: {} }, { document: {}, by: 'anna', more: 1 }]) {
      const { status } = await server.ask('POST', '/api/gardens', body);
      expect([body, status]).toEqual([body, 422]);
    }
  });

  it('must not be larger than the limit, whether or not it says how large it is', async () => {
    const large = `{"by":"anna","document":{"garden":"${'x'.repeat(2 * 1024 * 1024)}"}}`;
    expect((await server.ask('POST', '/api/gardens', large, json)).status).toBe(413);
    const stream = new ReadableStream({
      start(controller) {
        controller.enqueue(new TextEncoder().encode(large));
        controller.close();
      },
    });
    const init = { method: 'POST', body: stream, headers: json, duplex: 'half' } as RequestInit;
    expect((await fetch(`${server.address}/api/gardens`, init)).status).toBe(413);
  });

  it('must be asked in a way that the address answers', async () => {
    for (const [method, path, allow] of [
      ['PATCH', '/api/gardens', 'GET, POST, HEAD'],
      ['DELETE', '/api/health', 'GET, HEAD'],
    ] as const) {
      const { status, headers } = await server.ask(method, path);
      expect([status, headers.get('allow')]).toEqual([405, allow]);
    }
    expect((await fetch(`${server.address}/api/health`, { method: 'HEAD' })).status).toBe(200);
  });
});
