import { sampleSpoilers } from '@sorrel/almanac/sample-spoilers';
import { en } from '@sorrel/almanac/words';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Place } from '../plan/place.ts';
import { coreSpread, usualSpread } from './core-spread.ts';
import { corePlan, publishedSampling, sampleDepth } from './cores.ts';
import { checkShown } from './meter-shown.ts';
import { shareSample } from './share-sample.ts';
import { whenToSample } from './when-to-sample.ts';

const test = (date: string, value: number, more: object = {}) => ({
  id: date,
  date,
  instrument: 'laboratory' as const,
  depth: 0.15,
  cores: 12,
  ph: { value, method: 'water-1:1' as const },
  ...more,
});
const place = (name: string, more: Partial<Place> = {}): Place => ({
  id: name,
  name,
  kind: 'bed',
  situation: 'open ground',
  medium: 'mineral',
  area: 3,
  depth: 0.15,
  texture: { name: 'loam' } as never,
  plants: [],
  tests: [],
  applications: [],
  ...more,
});
const names = (places: readonly Place[]) => shareSample(places).map((group) => group.places.map((each) => each.name));

describe('which places share a sample', () => {
  // Practice note, step 1: group by fill, history and crop, one composite a group.
  it('puts together what is alike and leaves the unknown alone', () => {
    const lime = [{ date: '2026-03-01', material: 'calcitic-limestone', currency: 0.2 }];
    const all = [
      place('a'),
      place('b'),
      place('limed', { applications: lime }),
      place('sandy', { texture: { name: 'sand' } as never }),
      place('blueberries', { target: { low: 4.5, high: 5.5 } }),
      place('mix', { medium: 'mix' }),
      place('nobody knows', { texture: undefined as never }),
      place('limed too', { applications: lime }),
    ];
    expect(names(all)).toEqual([
      ['a', 'b'],
      ['limed', 'limed too'],
      ['sandy'],
      ['blueberries'],
      ['mix'],
      ['nobody knows'],
    ]);
    const why = new Map(shareSample(all).map((group) => [group.places[0]?.name, group.why.code]));
    expect(why.get('blueberries')).toBe('sampling.alone-target');
    expect(why.get('mix')).toBe('sampling.alone-fill');
    expect(why.get('nobody knows')).toBe('sampling.alone-soil');
    expect(why.get('sandy')).toBe('sampling.alone-different');
  });

  // 1.96·√2·0.15 = 0.42: what two tests cannot tell apart (FV55).
  it('parts places whose last tests differ by more than an error', () => {
    const near = [place('a', { tests: [test('2026-01-01', 6)] }), place('b', { tests: [test('2026-01-01', 6.4)] })];
    const far = [place('a', { tests: [test('2026-01-01', 6)] }), place('b', { tests: [test('2026-01-01', 6.5)] })];
    expect(names(near)).toEqual([['a', 'b']]);
    expect(names(far)).toEqual([['a'], ['b']]);
  });

  it('keeps every place in exactly one group', () => {
    const any = fc.record({
      medium: fc.constantFrom('mineral' as const, 'mix' as const),
      texture: fc.constantFrom('loam', 'sand'),
      low: fc.constantFrom(4.5, 6),
    });
    fc.assert(
      fc.property(fc.array(any, { maxLength: 12 }), (list) => {
        const places = list.map(({ medium, texture, low }, index) =>
          place(String(index), { medium, texture: { name: texture } as never, target: { low, high: low + 1 } }),
        );
        expect(names(places).flat().sort()).toEqual(places.map(({ name }) => name).sort());
      }),
    );
  });
});

describe('how many cores', () => {
  // Dynamics table `sampling_n` (MODEL): spread 0.3 and half width 0.1 take 35 cores, 0.4 and 0.2 take 16.
  it('follows the published table between its own bounds', () => {
    expect(corePlan(0.3, 0.1)).toMatchObject({ cores: 35, outOfReach: false });
    expect(corePlan(0.4, 0.2).cores).toBe(16);
    expect(corePlan(0.2, 0.2).cores).toBe(8);
    expect(corePlan(0.4, 0.1)).toMatchObject({ cores: 40, outOfReach: true });
    expect(corePlan(0.3, 0.1).wholeError).toBeGreaterThan(corePlan(0.3, 0.1).sampleError);
  });

  it('takes the usual spread without tests and moves with those that disagree', () => {
    expect(coreSpread([place('a')])).toEqual({ sd: usualSpread(place('a')), pairs: 0 });
    const wild = place('a', { tests: [test('2026-03-01', 5.5), test('2026-03-20', 6.5)] });
    const calm = place('a', { tests: [test('2026-03-01', 6), test('2026-03-20', 6)] });
    expect(coreSpread([wild]).pairs).toBe(1);
    expect(coreSpread([wild]).sd).toBeGreaterThan(0.25);
    expect(coreSpread([calm]).sd).toBeLessThan(0.25);
    const limed = { ...wild, applications: [{ date: '2026-03-10', material: 'lime', currency: 1 }] };
    expect(coreSpread([limed]).pairs).toBe(0);
  });

  it('goes as deep as the last test', () => {
    expect(sampleDepth(place('a', { tests: [test('2026-01-01', 6, { depth: 0.2 })] }))).toBe(0.2);
    expect(sampleDepth(place('a'))).toBe(0.15);
    expect(
      publishedSampling(place('a', { situation: 'lawn' })).some((row) => row.sources.includes('PURDUE_NEWTON')),
    ).toBe(true);
  });
});

describe('when to sample', () => {
  // RHS_2018: not within three months of lime, fertilizer or organic matter.
  it('waits three months after an application', () => {
    const when = whenToSample(
      { tests: [], applications: [{ date: '2026-09-20', material: 'lime', currency: 1 }] },
      '2026-10-12',
    );
    expect(when.from).toBe('2026-12-20');
    expect(when.why.map((each) => each.code)).toEqual(['sampling.when-after-application', 'sampling.when-first']);
  });

  // VCE98: autumn reads 0.1 to 0.3 lower than spring.
  it('keeps to the time of year of the last test', () => {
    const when = whenToSample({ tests: [test('2025-03-10', 6)], applications: [] }, '2026-10-12');
    expect(when).toMatchObject({ from: '2027-02-23', to: '2027-03-25' });
    expect(whenToSample({ tests: [test('2025-10-14', 6)], applications: [] }, '2026-10-12').from).toBe('2026-10-12');
    const later = whenToSample({ tests: [test('2025-10-14', 6)], applications: [] }, '2026-10-12', {
      earliest: '2027-05-01',
    });
    expect(later.from).toBe('2027-09-29');
  });
});

describe('the meter', () => {
  // EPA_FIELD_PH: each buffer within 0.05.
  it('is right when both buffers are shown within 0.05', () => {
    expect(
      checkShown([
        { ph: 4, shown: 4.05 },
        { ph: 7, shown: 6.98 },
      ]).good,
    ).toBe(true);
    const off = checkShown([
      { ph: 4, shown: 4.2 },
      { ph: 7, shown: 7 },
    ]);
    expect(off.good).toBe(false);
    expect(off.span).toBeCloseTo(2.8 / 3);
    expect(() => checkShown([])).toThrow(RangeError);
  });
});

it('has a sentence for everything that spoils a sample', () => {
  for (const { key } of sampleSpoilers) expect(en).toHaveProperty(`sampling.spoil-${key}`);
});
