import { readGarden } from '@sorrel/engine/document';
import { describe, expect, it } from 'vitest';
import { type Draft, draftOf, emptyDraft, entryOf } from './draft.ts';

const read = (draft: Draft) => readGarden({ garden: 'Test', places: [entryOf(draft)] }, { today: '2026-10-12' });

describe('the form of a place', () => {
  it('says the least the engine takes', () => {
    expect(entryOf({ ...emptyDraft, name: ' Bed ' })).toEqual({ name: 'Bed', kind: 'bed' });
    expect(read({ ...emptyDraft, name: 'Bed' }).problems).toEqual([]);
  });

  it('tells a size from an area', () => {
    expect(entryOf({ ...emptyDraft, name: 'a', size: '4 x 8 ft' })).toMatchObject({ size: '4 x 8 ft' });
    expect(entryOf({ ...emptyDraft, name: 'a', size: '1.2 m × 6 m' })).toMatchObject({ size: '1.2 m × 6 m' });
    expect(entryOf({ ...emptyDraft, name: 'a', size: '48 sq ft' })).toMatchObject({ area: '48 sq ft' });
    // 4 ft by 8 ft are 2.973 m²: 1 ft is 0.3048 m (NIST SP 811).
    expect(read({ ...emptyDraft, name: 'a', size: '4 x 8 ft' }).garden.places[0]?.area).toBeCloseTo(2.973, 3);
  });

  it('makes pots of a container and drops what belongs to beds', () => {
    const draft: Draft = {
      ...emptyDraft,
      name: 'Tubs',
      kind: 'container',
      count: '4',
      volume: '40 L',
      size: '1 x 2 m',
    };
    expect(entryOf(draft)).toEqual({ name: 'Tubs', kind: 'container', pots: { count: 4, volume: '40 L' } });
    expect(read(draft).problems).toEqual([]);
  });

  it('keeps what the form does not ask for', () => {
    const before = {
      name: 'Old',
      soil: { texture: 'loam', bulkDensity: '1.2 g/cm3' },
      water: { alkalinity: '3 meq/L' },
      tests: [{ date: '2026-09-01', by: 'probe', ph: { value: 6 } }],
    } as const;
    const entry = entryOf({ ...draftOf(before as never), name: 'New' }, before as never);
    expect(entry).toMatchObject({
      name: 'New',
      soil: { texture: 'loam', bulkDensity: '1.2 g/cm3' },
      water: { alkalinity: '3 meq/L' },
    });
    expect(entry).not.toHaveProperty('tests');
  });

  it('goes there and back without loss', () => {
    const draft: Draft = {
      ...emptyDraft,
      name: 'Row',
      kind: 'plot',
      size: '3 x 20 ft',
      depth: '6 in',
      situation: 'around plants',
      plants: ['blueberry, highbush', { plant: 'My vine', low: 6, high: 7 }],
      texture: 'sandy loam',
      organicMatter: '7 %',
      nearOpenWater: true,
      note: 'by the fence',
    };
    expect(draftOf(entryOf(draft))).toEqual(draft);
    expect(read(draft).problems).toEqual([]);
  });
});
