import { readFileSync } from 'node:fs';
import { setTimeout } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { demoFolder, type Running, running } from '../testing/running.ts';

let server: Running;
let garden = '';
const demo = parse(readFileSync(`${demoFolder}/sour-ground-heavy-rain.yaml`, 'utf8'));
const document = {
  ...demo,
  garden: 'Soil day at the mill',
  soilDay: { date: '2026-11-21', where: 'The old mill' },
  places: [...demo.places, ...demo.places].map((place: { name: string }, index: number) => ({
    ...place,
    name: `Bag ${index + 1}`,
    sample: {
      code: `A${index + 1}`,
      person: `Person${index + 1}`,
      neighbourhood: index % 2 === 0 ? 'Mill side' : 'Hill',
    },
  })),
};
const count: number = document.places.length;
const day = (what = '', method = 'GET', body?: unknown) =>
  server.ask(method, `/api/gardens/${garden}/day${what}`, body);

async function finished() {
  for (let left = 600; left > 0; left--) {
    const { body } = await day();
    if (body.state === 'done') return body;
    await setTimeout(100);
  }
  throw new Error('the day does not come to its end');
}

beforeAll(async () => {
  server = await running({ publicAddress: 'https://garden.example' });
  garden = (await server.ask('POST', '/api/gardens', { by: 'anna', document })).body.id;
});
afterAll(() => server?.stop());

describe('a soil day', () => {
  it('has nothing to give before it is planned', async () => {
    expect((await day()).body).toMatchObject({ state: 'none', samples: count, changed: count, asOf: null });
    expect((await day('/handouts.pdf')).status).toBe(409);
    expect((await day('/summary')).status).toBe(409);
  });

  it('pauses, goes on, and is planned to its end', async () => {
    expect((await day('/plan', 'POST', { asOf: '2026-11-25' })).status).toBe(202);
    expect((await day('/pause', 'POST')).status).toBe(200);
    expect((await day('/resume', 'POST')).body.state).toBe('running');
    const end = await finished();
    expect(end).toMatchObject({ done: count, failed: 0, changed: 0, asOf: '2026-11-25' });
    expect(end.jobs.map(({ code }: { code: string }) => code)).toEqual(
      document.places.map((_: unknown, index: number) => `A${index + 1}`),
    );
    // Asked for once more, nothing is planned again.
    expect((await day('/plan', 'POST', {})).body).toMatchObject({ state: 'done', done: count });
    const planned = server.lines.filter((line) => line.includes('"came":"done"'));
    expect(planned).toHaveLength(count);
  });

  it('gives each person a page, together, alone and as files', async () => {
    const all = await day('/handouts.pdf?units=us');
    expect([all.status, all.headers.get('content-type')]).toEqual([200, 'application/pdf']);
    const one = await day('/handouts/A2.pdf');
    expect(one.status).toBe(200);
    expect((await day('/handouts/Z9.pdf')).status).toBe(404);
    const zip = await day('/handouts.zip');
    expect(zip.status).toBe(200);
  });

  it('gives tables and a summary, and names nobody to others', async () => {
    const merge = String((await day('/merge.csv')).body)
      .trim()
      .split('\r\n');
    expect(merge).toHaveLength(count + 1);
    expect(merge[1]).toMatch(/^A1,Person1,Mill side,Bag 1,/);
    const { body } = await day('/summary');
    expect(body.samples).toBe(count);
    expect(body.neighbourhoods.map(({ name }: { name: string }) => name)).toEqual(['Hill', 'Mill side']);
    expect((await day('/summary.pdf')).status).toBe(200);
    const shared = String((await day('/anonymous.csv')).body);
    expect(shared.trim().split('\r\n')).toHaveLength(count + 1);
    expect(shared).not.toMatch(/Person|Bag|A1/);
  });

  it('is no day when the garden is none', async () => {
    const other = (await server.ask('POST', '/api/gardens', { by: 'anna', document: demo })).body.id;
    expect((await server.ask('GET', `/api/gardens/${other}/day`)).status).toBe(404);
    expect((await server.ask('POST', `/api/gardens/${other}/day/plan`, {})).status).toBe(404);
  });
});
