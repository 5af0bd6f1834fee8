import { readFileSync } from 'node:fs';
import { readWishes } from '@sorrel/engine/document';
import { type Arrangement, arrange, highsSolver } from '@sorrel/engine/placing';
import { say } from '@sorrel/engine/units';
import loadHighs from 'highs';
import { beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { planned } from '../testing/demo-gardens.ts';
import { readPdf } from '../testing/read-pdf.ts';
import { arrangementSheet } from './index.ts';

const squeezed = (text: string): string => text.replace(/\s+/g, '');
const { garden } = planned('sour-ground-heavy-rain');
const options = { system: 'us', printed: '2026-10-20', garden: garden.name, currencySymbol: '$' } as const;

let found: Arrangement;
beforeAll(async () => {
  const file = new URL('../../../demo/wishes/sour-ground-heavy-rain.yaml', import.meta.url);
  const { wishes, rules, seasons } = readWishes(parse(readFileSync(file, 'utf8')), garden.places);
  const { places, products, settings } = garden;
  found = arrange({ places, products, settings, wishes, rules, seasons }, highsSolver(await loadHighs()));
});

describe('the handout of an arrangement', () => {
  it('names every place with its plants of each season, the reasons, and what to keep apart, on two pages at most', async () => {
    const { pages, title } = await readPdf(arrangementSheet(found, options));
    expect(title).toBe(`What to grow where: ${garden.name}`);
    expect(pages.length).toBeLessThanOrEqual(2);
    const text = squeezed(pages.map((page) => page.text).join(' '));
    for (const { name, seasons, reasons } of found.places) {
      expect(text).toContain(squeezed(name));
      for (const { plant } of seasons.flat()) expect(text).toContain(squeezed(plant));
      for (const message of reasons) expect(text).toContain(squeezed(say(message, 'us')));
    }
    expect(found.apart.length).toBeGreaterThan(0);
    for (const message of found.apart) expect(text).toContain(squeezed(say(message, 'us')));
    expect(text).toContain('Season2');
    expect(text).not.toMatch(/undefined|NaN/);
  });

  it('says what finds no place, and leaves out what there is none of', async () => {
    const reasons = [{ code: 'placing.no-place' as const, parameters: { plant: 'Tomato' } }];
    const { runnerUp: _next, ...rest } = found;
    const short = { ...rest, apart: [], unmet: [{ plant: 'Tomato', seasons: [1], area: 2, reasons }] };
    const { pages } = await readPdf(arrangementSheet(short, { ...options, system: 'metric' }));
    const text = squeezed(pages.map((page) => page.text).join(' '));
    expect(text).toContain(squeezed('Tomato: 2 m² has no place in season 1.'));
    expect(text).not.toContain(squeezed('Keep apart'));
    expect(text).not.toContain(squeezed('Next best way'));
  });
});
