import { describe, expect, it } from 'vitest';
import { type Store, thingsOfKind } from '../src/index.ts';
import { at, bedOf, codes, value } from './kit.ts';

export function undoContract(open: () => Promise<Store>): void {
  const namesIn = async (store: Store, garden: string) =>
    thingsOfKind(value(await store.things(garden)), 'place').map((place) => place.content.name);

  describe('undo', () => {
    it('takes back the last entry of that person, one after the other', async () => {
      const store = await open();
      const { garden, add, correct, bed, undo } = await bedOf(store, 20);
      const second = add('place', { name: 'Bed 2' });
      const renamed = correct(bed, 'place', { name: 'Herbs' });
      value(await store.append([second, renamed]));
      expect(await namesIn(store, garden)).toEqual(['Herbs', 'Bed 2']);
      expect(value(await store.undo(undo())).entry).toBe(renamed.id);
      expect(await namesIn(store, garden)).toEqual(['Bed 1', 'Bed 2']);
      expect(value(await store.undo(undo())).entry).toBe(second.id);
      expect(await namesIn(store, garden)).toEqual(['Bed 1']);
      expect(value(await store.entries(garden))).toHaveLength(6);
    });

    it('leaves what others wrote', async () => {
      const store = await open();
      const { garden, add, correct, bed, undo } = await bedOf(store, 21);
      const hers = correct(bed, 'place', { name: 'Herbs' });
      const his = { ...correct(bed, 'place', { name: 'Salad' }), by: 'bert' };
      value(await store.append([hers, his]));
      value(await store.undo(undo()));
      expect(await namesIn(store, garden)).toEqual(['Salad']);
      value(await store.undo(undo('bert')));
      expect(await namesIn(store, garden)).toEqual(['Bed 1']);
      expect(codes(await store.undo(undo('bert')))).toEqual(['store.nothing-to-undo']);
      const theft = { id: add('place', { name: 'x' }).id, garden, by: 'bert', at, action: 'undo', entry: bed };
      expect(codes(await store.append([theft]))).toEqual(['store.not-yours']);
    });

    it('brings back what was removed, and can itself be taken back', async () => {
      const store = await open();
      const { garden, remove, bed, undo, undoOf } = await bedOf(store, 22);
      value(await store.append([remove(bed)]));
      expect(await namesIn(store, garden)).toEqual([]);
      const undone = value(await store.undo(undo()));
      expect(await namesIn(store, garden)).toEqual(['Bed 1']);
      value(await store.append([undoOf(undone.id)]));
      expect(await namesIn(store, garden)).toEqual([]);
      expect(codes(await store.append([undoOf(undone.id)]))).toEqual(['store.taken-back']);
    });

    it('is harmless when sent twice', async () => {
      const store = await open();
      const { garden, add, undo } = await bedOf(store, 23);
      value(await store.append([add('place', { name: 'Bed 2' }), add('place', { name: 'Bed 3' })]));
      const request = undo();
      const first = value(await store.undo(request));
      expect(value(await store.undo(request))).toEqual({ ...first, fresh: false });
      expect(await namesIn(store, garden)).toEqual(['Bed 1', 'Bed 2']);
    });

    it('hides what happened at a place that was taken back, and shows it again with the place', async () => {
      const store = await open();
      const { garden, add, remove, bed, undo } = await bedOf(store, 24);
      const test = { ...add('test', { date: '2026-02-01', by: 'strip', ph: { value: 6 } }, bed), by: 'bert' };
      value(await store.append([test, remove(bed)]));
      expect(value(await store.things(garden)).map((thing) => thing.kind)).toEqual(['garden']);
      value(await store.undo(undo()));
      expect(value(await store.things(garden)).map((thing) => thing.kind)).toEqual(['garden', 'place', 'test']);
    });
  });
}
