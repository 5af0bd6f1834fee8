import { readFileSync } from 'node:fs';
import { readGarden } from '@sorrel/engine/document';
import { planGarden } from '@sorrel/engine/plan';
import { afterAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { demoFolder } from '../../testing/running.ts';
import { createWorkshop } from './workshop.ts';

const document = parse(readFileSync(`${demoFolder}/sour-ground-heavy-rain.yaml`, 'utf8'));
const read = readGarden(document, { today: '2026-11-25' });
const workshop = createWorkshop(1);
afterAll(() => workshop.close());

describe('the workshop', () => {
  it('plans as the engine does, and keeps products what they are', async () => {
    const made = await workshop.run('plan', read);
    expect(made.plan).toEqual(planGarden(read.garden, { explain: true, forecast: true }));
    const [first] = made.plan.recommendations.flatMap(({ applications }) => applications);
    expect(made.read.garden.products).toContain(first?.product);
  });

  it('fails one job and goes on with the next', async () => {
    const bad = workshop.run('plan', { garden: {} } as never);
    const good = workshop.run('labels', {
      places: read.garden.places,
      options: { system: 'metric', printed: '2026-11-25' },
      base: 'https://garden.example/g/1',
    });
    await expect(bad).rejects.toThrow();
    // ISO 32000-2, 7.5.2: a PDF begins with its version.
    expect(new TextDecoder('latin1').decode((await good).subarray(0, 5))).toBe('%PDF-');
  });

  it('waits for what is under way before it closes, and takes nothing after', async () => {
    const own = createWorkshop(1);
    const done: string[] = [];
    const jobs = [1, 2].map((number) => own.run('plan', read).then(() => done.push(`plan ${number}`)));
    const closed = own.close().then(() => done.push('closed'));
    await expect(own.run('plan', read)).rejects.toThrow('closed');
    await Promise.all([...jobs, closed]);
    expect(done).toEqual(['plan 1', 'plan 2', 'closed']);
  });
});
