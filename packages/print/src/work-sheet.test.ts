import { say, weight } from '@sorrel/engine/units';
import { describe, expect, it } from 'vitest';
import { demoGardens, planned } from '../testing/demo-gardens.ts';
import { readPdf } from '../testing/read-pdf.ts';
import { workSheet } from './index.ts';

const options = { system: 'us', printed: '2026-10-20' } as const;
const squeezed = (text: string): string => text.replace(/\s+/g, '');

describe('a work sheet', () => {
  it('shows every place, its work, its cautions and room for what was really used', async () => {
    for (const { garden, plan } of demoGardens) {
      const { pages, title } = await readPdf(workSheet(garden, plan, options));
      expect(title).toBe(`Work sheet: ${garden.name}`);
      const text = squeezed(pages.map((page) => page.text).join(' '));
      for (const { name } of garden.places) expect(text.split(squeezed(name)).length - 1).toBeGreaterThanOrEqual(2);
      const applications = plan.recommendations.flatMap((advice) => advice.applications);
      expect(text.split('reallyused').length - 1).toBe(applications.length);
      for (const advice of plan.recommendations)
        for (const message of [...advice.cautions, ...advice.ask]) expect(text).toContain(squeezed(say(message, 'us')));
      for (const line of plan.shopping) expect(text).toContain(squeezed(line.product.name));
    }
  });

  it('puts the places that need most first and adds up the shopping', async () => {
    const { garden, plan } = planned('sour-ground-heavy-rain');
    const { pages } = await readPdf(workSheet(garden, plan, options));
    const first = pages[0]?.text ?? '';
    const order = ['Long vegetable bed', 'Where the ash heap was', 'Strawberry bed', 'Potato bed'].map((name) =>
      first.indexOf(name),
    );
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(order[0]).toBeGreaterThan(0);
    const sum = plan.shopping.reduce((total, line) => total + (line.cost ?? 0), 0);
    expect(sum).toBeGreaterThan(0);
    expect(first).toContain(`Together about $${sum.toFixed(2)}`);
  });

  it('keeps the cautions on the page of the dose they belong to', async () => {
    const { garden, plan } = planned('sour-ground-heavy-rain');
    const { pages } = await readPdf(workSheet(garden, plan, options));
    const weighed = weight(plan.recommendations[1]?.applications[0]?.mass ?? 0, 'us', 'down');
    const page = pages.slice(1).find(({ text }) => text.includes(weighed));
    expect(plan.recommendations[1]?.cautions.length).toBeGreaterThan(3);
    for (const caution of plan.recommendations[1]?.cautions ?? [])
      expect(squeezed(page?.text ?? '')).toContain(squeezed(say(caution, 'us')));
  });

  it('takes a garden of a hundred places, and one of none', async () => {
    const { garden, plan } = planned('sour-ground-heavy-rain');
    const many = Array.from({ length: 100 }, (_, index) => index % garden.places.length);
    const places = many.map((index) => garden.places[index]).filter((place) => place !== undefined);
    const recommendations = many.map((index) => plan.recommendations[index]).filter((advice) => advice !== undefined);
    const large = await readPdf(workSheet({ ...garden, places }, { ...plan, recommendations }, options));
    expect(large.pages.length).toBeGreaterThan(10);
    const empty = await readPdf(workSheet({ ...garden, places: [] }, { recommendations: [], shopping: [] }, options));
    expect(empty.pages[0]?.text).toContain('Nothing has to be bought');
  });
});
