import { describe, expect, it } from 'vitest';
import type { Store } from '../src/index.ts';
import { bedOf, codes, value, writer } from './kit.ts';

export function appendContract(open: () => Promise<Store>): void {
  describe('append', () => {
    it('numbers entries from 1 and gives them back as they were written', async () => {
      const store = await open();
      const { garden, add, bed } = await bedOf(store, 1);
      const test = add(
        'test',
        { date: '2026-02-01', by: 'laboratory', ph: { value: 5.2 }, calcium: '1640 lb/acre' },
        bed,
      );
      expect(value(await store.append([test]))).toEqual([{ id: test.id, garden, number: 3, fresh: true }]);
      const entries = value(await store.entries(garden));
      expect(entries.map((each) => each.number)).toEqual([1, 2, 3]);
      expect(entries[2]?.entry).toEqual(test);
      expect(value(await store.entries(garden, 2))).toHaveLength(1);
      expect(value(await store.version(garden))).toBe(3);
    });

    it('takes the same entry twice without harm, whatever the order of its fields', async () => {
      const store = await open();
      const { garden, add } = await bedOf(store, 2);
      const bed = add('place', { name: 'Bed 2', size: '4 x 8 ft' });
      const turned = Object.fromEntries(Object.entries(bed).reverse());
      expect(value(await store.append([bed]))[0]?.fresh).toBe(true);
      expect(value(await store.append([turned, turned]))).toMatchObject([
        { number: 3, fresh: false },
        { number: 3, fresh: false },
      ]);
      expect(value(await store.version(garden))).toBe(3);
    });

    it('refuses another entry under the same id, in the same and in another garden', async () => {
      const store = await open();
      const { garden, add } = await bedOf(store, 3);
      const bed = add('place', { name: 'Bed 2' });
      value(await store.append([bed]));
      expect(codes(await store.append([{ ...bed, by: 'bert' }]))).toEqual(['store.same-id']);
      const other = writer(33);
      value(await store.append([other.addGarden()]));
      expect(codes(await store.append([{ ...bed, garden: other.garden }]))).toEqual(['store.same-id']);
      expect(value(await store.version(garden))).toBe(3);
    });

    it('takes one id once, also when two gardens get it at the same moment', async () => {
      const store = await open();
      const writers = [writer(34), writer(35)];
      value(await store.append(writers.map((each) => each.addGarden())));
      const bed = writer(36).add('place', { name: 'Bed' });
      const results = await Promise.all(writers.map(({ garden }) => store.append([{ ...bed, garden }])));
      const [refused, ...others] = results.filter((each) => !each.ok);
      expect(others).toEqual([]);
      expect(refused === undefined ? [] : codes(refused)).toEqual(['store.same-id']);
    });

    it('stores all of a list or nothing', async () => {
      const store = await open();
      const { garden, add, bed } = await bedOf(store, 4);
      const good = add('application', { date: '2026-02-02', material: 'calcitic lime', amount: '5 lb' }, bed);
      const bad = add('application', { date: '2026-02-02', material: 'calcitic lime', amount: '5 lb' }, garden);
      expect(codes(await store.append([good, bad]))).toEqual(['store.no-place']);
      expect(value(await store.version(garden))).toBe(2);
      expect(value(await store.append([good]))[0]).toMatchObject({ number: 3, fresh: true });
    });

    it('names field, value and fix of what does not fit', async () => {
      const store = await open();
      const { garden, add, correct, bed, id } = await bedOf(store, 5);
      const sour = add('test', { date: '2026-02-30', by: 'laboratory', ph: { value: 52 } }, bed);
      expect(codes(await store.append([sour]))).toEqual(['document.not-a-date', 'document.ph-range']);
      expect(codes(await store.append([{ ...add('place', { name: 'x' }), colour: 'red' }]))).toEqual([
        'document.unknown-field',
      ]);
      expect(codes(await store.append(['words']))).toEqual(['store.not-an-entry']);
      expect(codes(await store.append([add('tree', {})]))).toEqual(['store.not-an-entry']);
      expect(codes(await store.append([{ ...add('place', { name: 'x' }), by: 'a\u0000b' }]))).not.toEqual([]);
      expect(codes(await store.append([{ ...add('place', { name: 'x' }), id: 'bed-1' }]))).not.toEqual([]);
      expect(codes(await store.append([correct(id(), 'place', { name: 'x' })]))).toEqual(['store.no-thing']);
      expect(codes(await store.append([correct(bed, 'material', { material: 'wood ash' })]))).toEqual([
        'store.other-kind',
      ]);
      expect(codes(await store.append([writer(55).add('place', { name: 'x' })]))).toEqual(['store.no-garden']);
      expect(codes(await store.append([{ ...add('garden', { garden: 'Again' }) }]))).toEqual(['store.garden-once']);
      expect(value(await store.version(garden))).toBe(2);
    });

    it('keeps what was corrected and what was removed', async () => {
      const store = await open();
      const { garden, add, correct, remove, bed } = await bedOf(store, 6);
      const test = add('test', { date: '2026-02-01', by: 'strip', ph: { value: 7.2 } }, bed);
      const mended = correct(test.id, 'test', { date: '2026-02-01', by: 'strip', ph: { value: 5.2 } }, { place: bed });
      value(await store.append([test, mended]));
      const now = value(await store.things(garden)).find((thing) => thing.id === test.id);
      expect(now).toMatchObject({ content: { ph: { value: 5.2 } }, corrections: 1, latest: mended.id });
      const gone = remove(test.id, { why: 'another bed' });
      value(await store.append([gone]));
      expect(value(await store.things(garden)).some((thing) => thing.id === test.id)).toBe(false);
      expect(value(await store.history(garden, test.id)).map((each) => each.entry)).toEqual([test, mended, gone]);
    });

    it('refuses a change made against an older version when asked to look', async () => {
      const store = await open();
      const { correct, remove, bed } = await bedOf(store, 7);
      const first = correct(bed, 'place', { name: 'Herb bed' }, { seen: bed });
      value(await store.append([first]));
      const late = correct(bed, 'place', { name: 'Salad bed' }, { seen: bed });
      expect(codes(await store.append([late]))).toEqual(['store.changed-meanwhile']);
      expect(codes(await store.append([remove(bed, { seen: bed })]))).toEqual(['store.changed-meanwhile']);
      value(await store.append([remove(bed, { seen: first.id })]));
      expect(value(await store.append([first]))[0]?.fresh).toBe(false);
    });

    it('keeps gardens apart and lists those that stand', async () => {
      const store = await open();
      const one = await bedOf(store, 8);
      const two = await bedOf(store, 88);
      const crossing = two.add('test', { date: '2026-02-01', by: 'strip', ph: { value: 6 } }, one.bed);
      expect(codes(await store.append([crossing]))).toEqual(['store.no-place']);
      expect(value(await store.gardens())).toMatchObject([
        { name: 'Hillside', places: 1, version: 2 },
        { name: 'Hillside', places: 1, version: 2 },
      ]);
      value(await store.append([two.remove(two.garden)]));
      expect(value(await store.gardens()).map((each) => each.id)).toEqual([one.garden]);
      expect(codes(await store.assemble(two.garden))).toEqual(['store.no-garden']);
    });
  });
}
