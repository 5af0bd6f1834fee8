import { type Foreseen, foresee, type Place, type Settings } from '@sorrel/engine/plan';
import { DOMParser, onErrorStopParsing } from '@xmldom/xmldom';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { forecastPicture } from './forecast-picture.ts';
import { safe } from './svg.ts';

const settings: Settings = { today: '2026-10-12', overshootChance: 0.05, hemisphere: 'north', finenessSystem: 'OH' };
const place: Place = {
  id: 'p1',
  name: 'Bed',
  kind: 'bed',
  situation: 'open ground',
  medium: 'mineral',
  area: 5,
  depth: 0.15,
  organicMatter: 0.04,
  plants: [],
  target: { low: 6, high: 7 },
  tests: [
    {
      id: 't1',
      date: '2026-09-14',
      instrument: 'laboratory',
      depth: 0.15,
      ph: { value: 5.4, method: 'water-1:1' },
      buffer: { value: 6.4, method: 'sikora' },
    },
    { id: 't0', date: '2024-09-14', instrument: 'laboratory', depth: 0.15, ph: { value: 5.6, method: 'water-1:1' } },
  ],
  applications: [{ date: '2025-04-01', material: 'calcitic-limestone', currency: 0.2 }],
};
const found = foresee(place, settings, [], { years: 2, members: 60 });
const seen: Foreseen = 'why' in found ? expect.fail('nothing foreseen') : found;

const parse = (svg: string) => new DOMParser({ onError: onErrorStopParsing }).parseFromString(svg, 'image/svg+xml');
const draw = (name: string, of: Foreseen = seen) => forecastPicture(name, of, { system: 'metric' });

describe('forecastPicture', () => {
  it('is well-formed whatever the place is called', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (name) => {
        const title = parse(draw(name)).getElementsByTagName('title')[0]?.textContent;
        expect(title).toMatch(/^pH of /);
      }),
      { numRuns: 60 },
    );
  });
  it('says in words what it shows', () => {
    const svg = parse(draw('Bed <1> & "2"')).documentElement;
    const [title, desc] = ['title', 'desc'].map((name) => svg?.getElementsByTagName(name)[0]);
    expect(title?.textContent).toContain('Bed <1> & "2"');
    expect(desc?.textContent).toMatch(/most likely \d\.\d.*8 times in 10.*Tests shown: 2/);
    expect(svg?.getAttribute('role')).toBe('img');
    expect(svg?.getAttribute('aria-labelledby')).toBe(`${title?.getAttribute('id')} ${desc?.getAttribute('id')}`);
  });
  it('draws every test, every dressing and three bands, inside its own frame', () => {
    const svg = parse(draw('Bed'));
    const withClass = (name: string) =>
      [...svg.getElementsByTagName('*')].filter((each) => each.getAttribute('class') === name);
    // One more dot stands in the legend.
    expect(withClass('dot')).toHaveLength(3);
    for (const band of ['b50', 'b80', 'b95']) expect(withClass(band)).toHaveLength(2);
    // The dressing under the axis and in the list.
    expect(withClass('full')).toHaveLength(2);
    const [, , width = 0, height = 0] = svg.documentElement?.getAttribute('viewBox')?.split(' ').map(Number) ?? [];
    for (const dot of withClass('dot')) {
      expect(Number(dot.getAttribute('cx'))).toBeGreaterThan(0);
      expect(Number(dot.getAttribute('cx'))).toBeLessThan(width);
      expect(Number(dot.getAttribute('cy'))).toBeLessThan(height);
    }
  });
  it('puts a higher pH higher and a later day further right', () => {
    const path = /class="median" d="([^"]+)"/.exec(draw('Bed'))?.[1] ?? '';
    const points = path
      .split(/[ML]/)
      .slice(1)
      .map((pair) => pair.split(' ').map(Number));
    for (const [index, [x = 0, y = 0]] of points.entries()) {
      const [before = 0, above = 0] = points[index - 1] ?? [];
      if (index === 0) continue;
      expect(x).toBeGreaterThan(before);
      const change = (seen.forecast.median[index] ?? 0) - (seen.forecast.median[index - 1] ?? 0);
      if (Math.abs(change) > 0.002) expect(Math.sign(above - y)).toBe(Math.sign(change));
    }
  });
  it('needs no colour: every paint is a grey', () => {
    for (const [, paint = ''] of draw('Bed').matchAll(/(?:fill|stroke)[:=]"?(#[0-9a-f]+)/g))
      expect(paint).toMatch(/^#(?:([0-9a-f])\1\1|([0-9a-f]{2})\2\2)$/);
  });
  it('marks a test that does not fit', () => {
    const odd = { ...seen, tests: seen.tests.map((test, index) => ({ ...test, outlier: index === 0 })) };
    expect(draw('Bed', odd)).toContain('does not fit');
    expect(draw('Bed')).not.toContain('does not fit');
  });
});

describe('safe', () => {
  it('gives the text back when it is read', () => {
    expect(parse(`<t>${safe('a < b & "c" > \'d\'')}</t>`).documentElement?.textContent).toBe('a < b & "c" > \'d\'');
    expect(safe('a\u0000b\ud800')).toBe('ab');
  });
});
