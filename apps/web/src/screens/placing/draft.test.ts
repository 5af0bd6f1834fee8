import { readWishes } from '@sorrel/engine/document';
import { describe, expect, it } from 'vitest';
import { planRecord } from '../../engine/garden-plan.ts';
import {
  areaOf,
  COUNTED,
  type Draft,
  documentOf,
  emptyDraft,
  faultsOf,
  type Ground,
  keepDraft,
  keptDraft,
  newWish,
  nowOf,
} from './draft.ts';

const document = {
  garden: 'test',
  places: [
    { name: 'Long bed', size: '1 x 4 m', plants: ['tomato', 'rhubarb'] },
    { name: 'Corner', area: '2 m2' },
  ],
};
const record = { id: 'g', document, from: { places: [], materials: [] } } as unknown as Parameters<
  typeof planRecord
>[0];
const { read } = planRecord(record, '2026-11-01');
const grounds: Ground[] = [
  { id: 'a', name: 'Long bed', area: 4, plants: ['tomato', 'rhubarb'], stays: (plant) => plant === 'rhubarb' },
  { id: 'b', name: 'Corner', area: 2, plants: [], stays: () => false },
];
const wish = { ...newWish('cabbage', 'metric'), amount: '1,5' };
const readAgain = (draft: Draft) => readWishes(documentOf(draft, grounds), read.garden.places);

describe('a list of wishes', () => {
  it('takes an area, or a number of plants with the distance between them', () => {
    expect(areaOf(wish)).toBe('1.5 m2');
    // 10 plants, each in a square of 45 cm: 10 × 0.45² m.
    expect(areaOf({ ...wish, amount: '10', unit: COUNTED, apart: '45' })).toBe('2.025 m2');
    expect(areaOf({ ...wish, amount: '10', unit: COUNTED })).toBeUndefined();
    expect(faultsOf({ ...wish, amount: '0', unit: COUNTED })).toEqual(new Set(['amount', 'apart']));
    expect(faultsOf(wish).size).toBe(0);
  });

  it('is read by the engine without a problem: wishes, what stays, what grew, what is fixed', () => {
    const draft: Draft = {
      seasons: 2,
      wishes: [{ ...wish, when: '2', light: 'sun', where: 'b' }, newWish('leek', 'metric')],
      places: { b: { light: 'shade', now: {} } },
    };
    const { wishes, rules, seasons, problems } = readAgain(draft);
    expect(problems).toEqual([]);
    expect(seasons).toBe(2);
    // The leek has no area yet.
    expect(wishes.map(({ plant, area, light }) => [plant.key, area, light])).toEqual([['cabbage', 1.5, 'sun']]);
    const [long, corner] = rules;
    // Rhubarb shares the bed with one other plant.
    expect(long?.stays?.map(({ plant, area }) => [plant.key, area])).toEqual([['rhubarb', 2]]);
    expect(long?.history).toEqual([{ grew: 'tomato', yearsAgo: 1 }]);
    expect(corner?.light).toBe('shade');
    expect(corner?.fixed?.map(({ plant, seasons: named }) => [plant.key, named])).toEqual([['cabbage', [2]]]);
  });

  it('lets the gardener say otherwise than the almanac, and forgets seasons that are not placed', () => {
    const [long] = grounds;
    if (long === undefined) throw new Error('no place');
    const place = { light: '', now: { rhubarb: 'gone' } } as const;
    expect([nowOf(long, 'rhubarb'), nowOf(long, 'rhubarb', place)]).toEqual(['stays', 'gone']);
    const { rules, problems } = readAgain({
      seasons: 1,
      wishes: [{ ...wish, when: '3', where: 'gone' }],
      places: { a: place },
    });
    expect(problems).toEqual([]);
    expect(rules[0]?.stays).toEqual([]);
    expect(rules.flatMap(({ fixed = [] }) => fixed)).toEqual([]);
  });

  it('is kept, and a storage that fails or holds something else does no harm', () => {
    const held = new Map<string, string>();
    const storage = {
      getItem: (key: string) => held.get(key) ?? null,
      setItem: (key: string, text: string) => void held.set(key, text),
    };
    const draft: Draft = { seasons: 3, wishes: [wish], places: {} };
    keepDraft('g', draft, storage);
    expect(keptDraft('g', storage)).toEqual(draft);
    expect(keptDraft('other', storage)).toEqual(emptyDraft);
    for (const text of ['{', '[]', '{"wishes":[1],"seasons":9,"places":7}']) {
      held.set('sorrel.wishes.g', text);
      expect(keptDraft('g', storage)).toEqual(emptyDraft);
    }
    const full = {
      setItem: () => {
        throw new Error('full');
      },
    };
    expect(() => keepDraft('g', draft, full)).not.toThrow();
  });
});
