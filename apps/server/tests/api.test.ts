import { readFileSync } from 'node:fs';
import { readGarden } from '@sorrel/engine/document';
import { planGarden } from '@sorrel/engine/plan';
import { newId } from '@sorrel/store';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { emptyDatabase, stopPostgres } from '../testing/postgres-once.ts';
import { demoFolder, type Running, running, today } from '../testing/running.ts';

const by = 'anna';
const at = '2026-11-20T09:30:00Z';
const id = () => newId(Date.parse(at));
const document = parse(readFileSync(`${demoFolder}/rooftop-containers.yaml`, 'utf8'));

afterAll(stopPostgres);

describe.each(['sqlite', 'postgres'] as const)('the API on %s', (kind) => {
  let server: Running;
  let ask: Running['ask'];
  beforeAll(async () => {
    server = await running(kind === 'sqlite' ? {} : { databaseUrl: await emptyDatabase() });
    ask = server.ask;
  });
  afterAll(() => server?.stop());

  async function started() {
    const garden = id();
    const bed = id();
    const entries = [
      { id: garden, garden, by, at, action: 'add', kind: 'garden', content: { garden: 'Back yard' } },
      { id: bed, garden, by, at, action: 'add', kind: 'place', content: { name: 'Bed 1', size: '4 x 8 ft' } },
    ];
    const { status } = await ask('POST', `/api/gardens/${garden}/entries`, { entries });
    expect(status).toBe(200);
    return { garden, bed, url: `/api/gardens/${garden}` };
  }
  const test = (garden: string, place: string, ph: number) => ({
    ...{ id: id(), garden, place, by, at, action: 'add', kind: 'test' },
    content: { date: '2026-11-01', by: 'laboratory', ph: { value: ph, in: 'water-1:1' } },
  });

  it('tells that it is well', async () => {
    const { status, body } = await ask('GET', '/api/health');
    expect([status, body.status, body.database]).toEqual([200, 'fine', kind]);
  });

  it('starts a garden from a document, gives it back as it was written, and lists it', async () => {
    const garden = id();
    const made = await ask('POST', '/api/gardens', { by, id: garden, document });
    expect([made.status, made.body.id, made.headers.get('location')]).toEqual([201, garden, `/api/gardens/${garden}`]);
    expect((await ask('GET', `/api/gardens/${garden}`)).body.document).toEqual(document);
    expect((await ask('GET', '/api/gardens')).body.gardens).toContainEqual(made.body);
    // Sent again, because the first answer was lost on the way.
    const again = await ask('POST', '/api/gardens', { by, id: garden, document });
    expect([again.status, again.body]).toEqual([200, made.body]);
  });

  it('refuses a document with a wrong entry at its field, and stores nothing of it', async () => {
    const garden = id();
    const bad = structuredClone(document);
    bad.places[1].tests[0].ph.value = 45;
    const { status, body } = await ask('POST', '/api/gardens', { by, id: garden, document: bad });
    expect(status).toBe(422);
    expect(body.problems[0]).toMatchObject({ place: 'Herb boxes', field: 'tests[0].ph.value', value: 45 });
    expect((await ask('GET', `/api/gardens/${garden}`)).status).toBe(404);
  });

  it('answers 404 for a garden, place, thing, photo or address that is not there', async () => {
    const { url } = await started();
    for (const path of [
      `/api/gardens/${id()}`,
      `/api/gardens/not-an-id`,
      `${url}/places/${id()}`,
      `/api/gardens/${id()}/places/${id()}`,
      `/api/gardens/${id()}/entries`,
      `/api/gardens/${id()}/plan`,
      `/api/gardens/${id()}/export`,
      `/api/gardens/${id()}/settings`,
      `${url}/things/${id()}/history`,
      `/api/photos/${'0'.repeat(64)}`,
      '/api/reference/dragons',
      '/api/nowhere',
    ]) {
      const { status, headers } = await ask('GET', path);
      expect([path, status, headers.get('content-type')]).toEqual([path, 404, expect.stringContaining('problem+json')]);
    }
    expect((await ask('DELETE', `/api/gardens/${id()}?by=anna`)).status).toBe(404);
    const undo = await ask('POST', `/api/gardens/${id()}/undo`, { id: id(), by });
    expect(undo.status).toBe(404);
    expect((await ask('PUT', `/api/gardens/${id()}/settings`, { by, settings: { garden: 'x' } })).status).toBe(404);
  });

  it('keeps an entry once, however often it is sent', async () => {
    const { garden, bed, url } = await started();
    const entry = test(garden, bed, 5.4);
    const first = await ask('POST', `${url}/entries`, { entries: [entry] });
    const second = await ask('POST', `${url}/entries`, { entries: [entry] });
    expect(first.body.results).toEqual([{ id: entry.id, outcome: 'stored', number: 3 }]);
    expect(second.body).toEqual({ version: 3, results: [{ id: entry.id, outcome: 'known', number: 3 }] });
    expect((await ask('GET', url)).body.document.places[0].tests).toHaveLength(1);
  });

  it('keeps it once when it is sent many times at the same moment', async () => {
    const { garden, bed, url } = await started();
    const entry = test(garden, bed, 5.4);
    const answers = await Promise.all(
      Array.from({ length: 12 }, () => ask('POST', `${url}/entries`, { entries: [entry] })),
    );
    expect(answers.map(({ status }) => status)).toEqual(answers.map(() => 200));
    expect(answers.filter(({ body }) => body.results[0].outcome === 'stored')).toHaveLength(1);
  });

  it('refuses an id that says something else already, and stores nothing of that batch', async () => {
    const { garden, bed, url } = await started();
    const entry = test(garden, bed, 5.4);
    await ask('POST', `${url}/entries`, { entries: [entry] });
    const other = { ...entry, content: { ...entry.content, ph: { value: 6.4, in: 'water-1:1' } } };
    const { status, body } = await ask('POST', `${url}/entries`, { entries: [test(garden, bed, 6), other] });
    expect([status, body.type, body.problems[0].code]).toEqual([409, '/api/problems#conflict', 'store.same-id']);
    expect((await ask('GET', `${url}/entries`)).body.version).toBe(3);
  });

  it('refuses a change of what somebody else changed meanwhile', async () => {
    const { garden, bed, url } = await started();
    const correct = (name: string) => ({
      ...{ id: id(), garden, by, at, action: 'correct', kind: 'place', thing: bed, seen: bed },
      content: { name, size: '4 x 8 ft' },
    });
    expect((await ask('POST', `${url}/entries`, { entries: [correct('Long bed')] })).status).toBe(200);
    const late = await ask('POST', `${url}/entries`, { entries: [correct('Old bed')] });
    expect([late.status, late.body.problems[0].code]).toEqual([409, 'store.changed-meanwhile']);
    expect((await ask('GET', url)).body.document.places[0].name).toBe('Long bed');
  });

  it('says at which entry and field of a batch what is wrong', async () => {
    const { garden, bed, url } = await started();
    const bad = { ...test(garden, bed, 5.4), content: { date: 'yesterday', by: 'laboratory' } };
    const { status, body } = await ask('POST', `${url}/entries`, { entries: [test(garden, bed, 5), bad] });
    expect([status, body.problems[0].field]).toEqual([422, 'entries[1].content.date']);
    const stray = await ask('POST', `${url}/entries`, { entries: [test(id(), bed, 5)] });
    expect([stray.status, stray.body.problems[0].field]).toEqual([422, 'entries[0].garden']);
    expect((await ask('POST', `${url}/entries`, { entries: [] })).status).toBe(422);
    expect((await ask('POST', `${url}/entries`, { entries: [null, 7] })).status).toBe(422);
    expect((await ask('POST', `${url}/entries`, { entries: [test(garden, bed, 5)], extra: 1 })).status).toBe(422);
    expect((await ask('GET', `${url}/entries`)).body.version).toBe(2);
  });

  it('takes each entry of a queue for itself, in its order, and says what became of it', async () => {
    const { garden, bed, url } = await started();
    const [good, later] = [test(garden, bed, 5.4), test(garden, bed, 5.6)];
    const bad = { ...test(garden, bed, 5.4), content: { date: 'yesterday', by: 'laboratory' } };
    const orphan = test(garden, id(), 5);
    const entries = [good, bad, orphan, later, good];
    const { status, body } = await ask('POST', `${url}/entries`, { together: false, entries });
    expect(status).toBe(200);
    expect(body.version).toBe(4);
    expect(body.results.map((each: { outcome: string }) => each.outcome)).toEqual([
      'stored',
      'refused',
      'refused',
      'stored',
      'known',
    ]);
    expect(body.results[1].problems[0].field).toBe('content.date');
    expect(body.results[2].problems[0].code).toBe('store.no-place');
  });

  it('gives what is new since a number, page by page', async () => {
    const { garden, bed, url } = await started();
    const entries = [5, 5.1, 5.2].map((ph) => test(garden, bed, ph));
    await ask('POST', `${url}/entries`, { entries });
    const first = (await ask('GET', `${url}/entries?since=2&limit=2`)).body;
    expect([first.version, first.more]).toEqual([5, true]);
    expect(first.entries.map((each: { number: number }) => each.number)).toEqual([3, 4]);
    expect(first.entries[0].entry).toEqual(entries[0]);
    const rest = (await ask('GET', `${url}/entries?since=4`)).body;
    expect([rest.entries.length, rest.more]).toEqual([1, false]);
    expect((await ask('GET', `${url}/entries?since=5`)).body).toEqual({ version: 5, entries: [], more: false });
    for (const query of ['since=-1', 'since=x', 'limit=0']) {
      const { status, body } = await ask('GET', `${url}/entries?${query}`);
      expect([query, status, body.problems[0].field]).toEqual([query, 422, query.split('=')[0]]);
    }
  });

  it('reads a place, and says by its ETag that nothing has changed', async () => {
    const { garden, bed, url } = await started();
    const first = await ask('GET', `${url}/places/${bed}`);
    expect(first.body).toMatchObject({ id: bed, garden, version: 2, place: { name: 'Bed 1', size: '4 x 8 ft' } });
    const etag = first.headers.get('etag') ?? '';
    const held = { 'if-none-match': etag };
    expect((await ask('GET', `${url}/places/${bed}`, undefined, held)).status).toBe(304);
    await ask('POST', `${url}/entries`, { entries: [test(garden, bed, 5.4)] });
    const second = await ask('GET', `${url}/places/${bed}`, undefined, held);
    expect([second.status, second.body.version, second.body.place.tests.length]).toEqual([200, 3, 1]);
    const whole = await ask('GET', url);
    expect((await ask('GET', url, undefined, { 'if-none-match': whole.headers.get('etag') ?? '' })).status).toBe(304);
  });

  it('takes back the last entry of a person, once for one id', async () => {
    const { garden, bed, url } = await started();
    const entry = test(garden, bed, 5.4);
    await ask('POST', `${url}/entries`, { entries: [entry] });
    const request = { id: id(), by };
    const undone = await ask('POST', `${url}/undo`, request);
    expect([undone.status, undone.body.entry, undone.body.fresh]).toEqual([200, entry.id, true]);
    expect((await ask('POST', `${url}/undo`, request)).body).toEqual({ ...undone.body, fresh: false });
    expect((await ask('GET', url)).body.document.places[0].tests).toBeUndefined();
    const history = await ask('GET', `${url}/things/${entry.id}/history`);
    expect(history.body.entries.map((each: { number: number }) => each.number)).toEqual([3, 4]);
    const stranger = await ask('POST', `${url}/undo`, { id: id(), by: 'ben' });
    expect([stranger.status, stranger.body.problems[0].code]).toEqual([409, 'store.nothing-to-undo']);
    expect((await ask('POST', `${url}/undo`, { by })).status).toBe(422);
  });

  it('removes a garden by an entry, so that an undo brings it back', async () => {
    const { url } = await started();
    const entry = id();
    expect((await ask('DELETE', url)).status).toBe(422);
    const gone = await ask('DELETE', `${url}?by=${by}&id=${entry}`);
    expect([gone.status, gone.body.number]).toEqual([200, 3]);
    expect((await ask('GET', url)).status).toBe(404);
    expect((await ask('DELETE', `${url}?by=${by}&id=${entry}`)).body.fresh).toBe(false);
    expect((await ask('POST', `${url}/undo`, { id: id(), by })).status).toBe(200);
    expect((await ask('GET', url)).status).toBe(200);
  });

  it('reads and changes the settings of a garden', async () => {
    const { garden, url } = await started();
    const before = (await ask('GET', `${url}/settings`)).body;
    expect(before).toMatchObject({ latest: garden, settings: { garden: 'Back yard' } });
    const sent = { id: id(), by, seen: garden, settings: { garden: 'Back yard', units: 'us', overshootChance: 0.02 } };
    const changed = await ask('PUT', `${url}/settings`, sent);
    expect([changed.status, changed.body.id]).toEqual([200, sent.id]);
    expect((await ask('PUT', `${url}/settings`, sent)).body.fresh).toBe(false);
    expect((await ask('GET', `${url}/settings`)).body).toMatchObject({ latest: sent.id, settings: sent.settings });
    expect((await ask('PUT', `${url}/settings`, { ...sent, id: id() })).status).toBe(409);
    const bad = await ask('PUT', `${url}/settings`, { by, settings: { garden: 'x', units: 'furlongs' } });
    expect([bad.status, bad.body.problems[0].field]).toEqual([422, 'content.units']);
  });

  it('writes a garden out and reads it in somewhere else, the same to the byte', async () => {
    const { garden, bed, url } = await started();
    await ask('POST', `${url}/entries`, { entries: [test(garden, bed, 5.4)] });
    const file = await (await fetch(`${server.address}${url}/export`)).text();
    expect((await ask('GET', `${url}/export`)).headers.get('content-disposition')).toMatch(/^attachment; filename="/);
    const elsewhere = await running();
    try {
      const json = { 'content-type': 'application/json' };
      const first = await elsewhere.ask('POST', '/api/import', file, json);
      expect([first.status, first.body]).toEqual([200, { garden, added: 3, known: 0, photos: 0 }]);
      expect((await elsewhere.ask('POST', '/api/import', file, json)).body).toMatchObject({
        added: 0,
        known: 3,
      });
      expect(await (await fetch(`${elsewhere.address}${url}/export`)).text()).toBe(file);
    } finally {
      await elsewhere.stop();
    }
    const bad = await ask('POST', '/api/import', { hello: 'world' });
    expect([bad.status, bad.body.problems[0].code]).toEqual([422, 'store.not-an-export']);
  });

  it('plans a garden for scripts', async () => {
    const made = await ask('POST', '/api/gardens', { by, document });
    const url = `/api/gardens/${made.body.id}/plan`;
    const { status, body } = await ask('GET', `${url}?asOf=2026-11-25&units=us`);
    expect(status).toBe(200);
    expect(body.places.map((each: { name: string }) => each.name)).toEqual(
      document.places.map((each: { name: string }) => each.name),
    );
    expect([body.asOf, body.places[0].plan.derivation]).toEqual(['2026-11-25', undefined]);
    const explained = (await ask('GET', `${url}?explain=yes`)).body;
    expect(explained.asOf).toBe(document.asOf);
    expect(explained.places[0].plan.derivation.steps.length).toBeGreaterThan(3);
    expect((await ask('GET', `${url}?asOf=soon`)).status).toBe(422);
  });

  it('gives the doses of the command line, and plans anew once something is written', async () => {
    const pots = parse(readFileSync(`${demoFolder}/rooftop-containers.yaml`, 'utf8'));
    const made = await ask('POST', '/api/gardens', { by, document: pots });
    const url = `/api/gardens/${made.body.id}/plan`;
    type Answer = { places: { plan: { applications: { mass: number }[] } }[] };
    const doses = (answer: Answer) => answer.places.map((each) => each.plan.applications.map(({ mass }) => mass));
    const expected = (forecast: boolean) =>
      planGarden(readGarden(pots, { today }).garden, { forecast }).recommendations.map(({ applications }) =>
        applications.map(({ mass }) => mass),
      );
    const first = (await ask('GET', url)).body;
    expect(doses(first)).toEqual(expected(true));
    // This garden has a pot whose first dressing the forecast makes smaller.
    expect(doses(first)).not.toEqual(expected(false));
    expect((await ask('GET', url)).body).toEqual(first);
    const [thing] = (await ask('GET', `/api/gardens/${made.body.id}`)).body.from.places;
    const removal = { id: id(), garden: made.body.id, by, at, action: 'remove', thing: thing.id };
    expect((await ask('POST', url.replace('/plan', '/entries'), { entries: [removal] })).status).toBe(200);
    expect((await ask('GET', url)).body.places.length).toBe(first.places.length - 1);
  });
});
