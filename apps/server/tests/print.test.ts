import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { demoFolder, type Running, running } from '../testing/running.ts';

let server: Running;
let garden = '';
let place = '';
const document = parse(readFileSync(`${demoFolder}/sour-ground-heavy-rain.yaml`, 'utf8'));

beforeAll(async () => {
  server = await running({ publicAddress: 'https://garden.example' });
  garden = (await server.ask('POST', '/api/gardens', { by: 'anna', document })).body.id;
  place = (await server.ask('GET', `/api/gardens/${garden}`)).body.from.places[0].id;
});
afterAll(() => server?.stop());

const print = (what: string) => server.ask('GET', `/api/gardens/${garden}/print/${what}`);

describe('paper', () => {
  it.each(['work-sheet.pdf', 'handouts.pdf?units=us&largePrint=yes', 'labels.pdf?paper=us-letter'])(
    '%s is a PDF',
    async (what) => {
      const { status, headers, body } = await print(what);
      expect([status, headers.get('content-type')]).toEqual([200, 'application/pdf']);
      // ISO 32000-2, 7.5.2: a PDF begins with its version.
      expect(new TextDecoder('latin1').decode(body.subarray(0, 5))).toBe('%PDF-');
      expect(body.length).toBeGreaterThan(2000);
    },
  );

  it.each([
    ['usable.pdf', (at: string) => `usable.pdf?place=${at}`],
    ['plant.pdf', () => 'plant.pdf?plant=million%20bells'],
    [
      'symptoms.pdf',
      (at: string) => `symptoms.pdf?place=${at}&leaves=young&pattern=even&weeds=dandelion&seen=2026-10-01`,
    ],
  ] as const)('%s is a PDF', async (_, what) => {
    const { status, body } = await print(what(place));
    expect(status).toBe(200);
    expect(new TextDecoder('latin1').decode(body.subarray(0, 5))).toBe('%PDF-');
  });

  it('refuses a plant, a place or an answer it does not know', async () => {
    expect((await print('plant.pdf?plant=triffid')).status).toBe(404);
    expect((await print(`symptoms.pdf?place=${garden}`)).status).toBe(404);
    expect((await print(`symptoms.pdf?place=${place}&leaves=blue`)).status).toBe(422);
    expect((await print(`usable.pdf?place=${garden}`)).status).toBe(404);
  });

  it('prints one place alone', async () => {
    const [all, one] = [await print('handouts.pdf'), await print(`handouts.pdf?place=${place}`)];
    expect(one.body.length).toBeLessThan(all.body.length);
    expect((await print(`handouts.pdf?place=${garden}`)).status).toBe(404);
  });

  it('prints an arrangement that the page worked out, and refuses sentences nobody knows', async () => {
    const figures = { currency: 1, material: 2, months: 6, places: 1, unmet: 0 };
    const place = {
      name: 'Long bed',
      seasons: [[{ plant: 'Tomato', area: 2, stays: false, fixed: true }]],
      reasons: [{ code: 'placing.fits', parameters: { ph: { value: 6.2, dimension: 'ph' } } }],
    };
    const arrangement = { places: [place], unmet: [], clashes: [], apart: [], messages: [], figures, greedy: figures };
    const send = (told: object) =>
      server.ask('POST', `/api/gardens/${garden}/print/arrangement.pdf?units=us`, { arrangement: told });
    const { status, body } = await send(arrangement);
    expect(status).toBe(200);
    expect(new TextDecoder('latin1').decode(body.subarray(0, 5))).toBe('%PDF-');
    expect((await send({ ...arrangement, messages: [{ code: 'placing.poem' }] })).status).toBe(422);
    expect((await send({ ...arrangement, places: [{}] })).status).toBe(422);
  });

  it('refuses what it cannot print', async () => {
    expect((await print('work-sheet.pdf?paper=napkin')).status).toBe(422);
    expect((await print('poem.csv')).status).toBe(404);
    expect((await server.ask('GET', `/api/gardens/${place}/print/work-sheet.pdf`)).status).toBe(404);
  });
});

it('gives tables whose rows name the places of the record', async () => {
  const { headers, body } = await print('applications.csv?units=metric');
  expect(headers.get('content-type')).toBe('text/csv; charset=utf-8');
  const [head, ...rows] = String(body).trim().split('\r\n');
  expect(head?.split(',').slice(0, 2)).toEqual(['place_id', 'place']);
  const ids = (await server.ask('GET', `/api/gardens/${garden}`)).body.from.places.map(
    (each: { id: string }) => each.id,
  );
  expect(rows.length).toBeGreaterThan(0);
  for (const row of rows) expect(ids).toContain(row.split(',')[0]);
  expect((await print('shopping.csv')).body).toMatch(/^material,product,/);
});

describe('the calendar', () => {
  it('is at an address of its own, which stays the same', async () => {
    const { path } = (await server.ask('GET', `/api/gardens/${garden}/calendar`)).body;
    // 128 bits in base64url (RFC 4648): 22 letters.
    expect(path).toMatch(new RegExp(`^/calendar/${garden}/[\\w-]{22}\\.ics$`));
    const { status, headers, body } = await server.ask('GET', path);
    expect([status, headers.get('content-type')]).toEqual([200, 'text/calendar; charset=utf-8']);
    expect(body).toMatch(/^BEGIN:VCALENDAR\r\n/);
    expect(body.replaceAll('\r\n ', '')).toContain(`https://garden.example/g/${garden}/place/${place}`);
    expect((await server.ask('GET', `/api/gardens/${garden}/calendar`)).body.path).toBe(path);
  });

  it('is not found by guessing, and its address is not in the log', async () => {
    const { path } = (await server.ask('GET', `/api/gardens/${garden}/calendar`)).body;
    const token = path.slice(-26, -4);
    for (const guess of [token.slice(1), `${token}A`, `${token[0] === 'A' ? 'B' : 'A'}${token.slice(1)}`, ''])
      expect([guess, (await server.ask('GET', `/calendar/${garden}/${guess}.ics`)).status]).toEqual([guess, 404]);
    expect((await server.ask('GET', path.replace(garden, place))).status).toBe(404);
    await server.ask('GET', path);
    expect(server.lines.join('')).not.toContain(token);
    expect(server.lines.join('')).toContain('/calendar/:garden/:file');
  });
});
