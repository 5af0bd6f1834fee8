import { Validator } from '@seriousme/openapi-schema-validator';
import { RegExpRouter } from 'hono/router/reg-exp-router';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { createApp } from '../src/app.ts';
import { createLog } from '../src/http/log.ts';
import type { Room } from '../src/room.ts';
import { type Running, running } from '../testing/running.ts';

let server: Running;
type Description = { paths: Record<string, Record<string, { summary?: string }>>; openapi: string };
let description: Description;
beforeAll(async () => {
  server = await running();
  description = (await (await fetch(`${server.address}/api/openapi.json`)).json()) as Description;
});
afterAll(() => server?.stop());

it('is a valid OpenAPI 3.1 document, by a validator that is not ours', async () => {
  const validator = new Validator();
  const { valid, errors } = await validator.validate(structuredClone(description));
  expect(errors ?? []).toEqual([]);
  expect([valid, validator.version]).toEqual([true, '3.1']);
});

it('points only at what it holds', () => {
  const missing: string[] = [];
  JSON.stringify(description, (key, value) => {
    if (key === '$ref') {
      const found = String(value)
        .slice(2)
        .split('/')
        .reduce<unknown>(
          (at, part) => (at as Record<string, unknown> | undefined)?.[part.replaceAll('~1', '/').replaceAll('~0', '~')],
          description,
        );
      if (found === undefined) missing.push(value);
    }
    return value;
  });
  expect(missing).toEqual([]);
});

it('describes the routes that are served, each with a summary, and no others', () => {
  const app = createApp({
    log: createLog('silent'),
    webFiles: new Map(),
    secret: new Uint8Array(32),
    now: Date.now,
    stopping: () => false,
  } as unknown as Room);
  const served = new Set(
    app.routes
      .filter(({ method, path }) => method !== 'ALL' && path.startsWith('/') && !['/*', '*'].includes(path))
      .map(({ method, path }) => `${method} ${path.replace(/:(\w+)(\{[^}]*\})?/g, '{$1}')}`),
  );
  served.delete('GET /api/openapi.json');
  // Addresses that the framework's quick router cannot tell apart would make every request slower.
  const quick = new RegExpRouter();
  expect(() => {
    for (const { method, path, handler } of app.routes) quick.add(method, path, handler);
    quick.match('GET', '/api/health');
  }).not.toThrow();
  const told = Object.entries(description.paths).flatMap(([path, methods]) =>
    Object.keys(methods).map((method) => `${method.toUpperCase()} ${path}`),
  );
  expect(told.sort()).toEqual([...served].sort());
  for (const methods of Object.values(description.paths))
    for (const { summary } of Object.values(methods)) expect(summary).toMatch(/\w/);
});

it('is served so that it need not be sent twice', async () => {
  const { headers } = await fetch(`${server.address}/api/openapi.json`);
  const again = await fetch(`${server.address}/api/openapi.json`, {
    headers: { 'if-none-match': headers.get('etag') ?? '' },
  });
  expect([again.status, description.openapi]).toEqual([304, '3.1.0']);
});
