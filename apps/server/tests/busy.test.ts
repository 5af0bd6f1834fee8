import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { demoFolder, running } from '../testing/running.ts';

const demo = parse(readFileSync(`${demoFolder}/sour-ground-heavy-rain.yaml`, 'utf8'));

/** A garden that takes seconds to plan. */
const large = {
  ...demo,
  places: Array.from({ length: 10 }, (_, row) =>
    demo.places.map((place: { name: string }) => ({ ...place, name: `${place.name} ${row}` })),
  ).flat(),
};

describe('while a large garden is planned and printed', () => {
  it('everybody else is answered, and a stop waits for the paper', async () => {
    const server = await running();
    const garden = (await server.ask('POST', '/api/gardens', { by: 'anna', document: large })).body.id;
    const order: string[] = [];
    const paper = server.ask('GET', `/api/gardens/${garden}/print/work-sheet.pdf`).then((answer) => {
      order.push('paper');
      return answer;
    });
    for (let times = 0; times < 10; times++) {
      expect((await server.ask('GET', '/api/health')).status).toBe(200);
      order.push('health');
    }
    const stopped = server.stop().then(() => order.push('stopped'));
    expect((await paper).status).toBe(200);
    await stopped;
    // Were they made on the thread that answers, the paper would come before the first of the others.
    expect(order).toEqual([...Array.from({ length: 10 }, () => 'health'), 'paper', 'stopped']);
  });
});
