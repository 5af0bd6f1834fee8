import { describe, expect, it } from 'vitest';
import { gardenExport, type Store } from '../src/index.ts';
import { bedOf, codes, png, problems, value } from './kit.ts';

/** A garden with everything a record can hold: corrections, a removal, an undo, photos, words of many scripts. */
async function fullGarden(store: Store, seed: number): Promise<string> {
  const { garden, add, correct, remove, bed, undo } = await bedOf(store, seed);
  const first = value(await store.putPhoto('image/png', png(1))).hash;
  const second = value(await store.putPhoto('image/jpeg', png(2, 0, 255))).hash;
  const note = 'Æble, 日本, \u2028 "quoted" \\ and a lone \ud800, 1e21, \u0000';
  const seen = add('observation', { date: '2026-02-07', photos: [second, first], note }, bed);
  const test = add(
    'test',
    { date: '2026-02-01', by: 'laboratory', ph: { value: 5.25 }, calcium: ' 1640  lb/acre ' },
    bed,
  );
  value(await store.append([seen, test, correct(bed, 'place', { name: ' Bed 1 ' }), remove(test.id)]));
  value(await store.undo(undo()));
  return garden;
}

export function transferContract(open: () => Promise<Store>): void {
  describe('export and import', () => {
    it('is the same to the byte after a round trip into an empty store', async () => {
      const [from, to] = [await open(), await open()];
      const garden = await fullGarden(from, 40);
      const text = value(await from.exportGarden(garden));
      expect(gardenExport.safeParse(JSON.parse(text)).error).toBeUndefined();
      expect(value(await to.importGarden(text))).toEqual({ garden, added: 7, known: 0, photos: 2 });
      expect(value(await to.exportGarden(garden))).toBe(text);
      expect(value(await to.assemble(garden))).toEqual(value(await from.assemble(garden)));
      expect(value(await to.check())).toMatchObject({ gardens: 1, entries: 7, photos: 2, problems: [] });
      expect(value(await to.importGarden(text))).toEqual({ garden, added: 0, known: 7, photos: 2 });
      expect(value(await to.importGarden(JSON.stringify(JSON.parse(text), null, 1))).known).toBe(7);
    });

    it('refuses a file that is damaged, contradicts the store or comes from a newer version, and takes nothing of it', async () => {
      const [from, to] = [await open(), await open()];
      const garden = await fullGarden(from, 41);
      const text = value(await from.exportGarden(garden));
      const file = JSON.parse(text);
      const changed = (change: object) => JSON.stringify({ ...file, ...change });
      const photo = { ...file.photos[0], base64: Buffer.from(png(9)).toString('base64') };
      expect(codes(await to.importGarden(text.slice(0, -20)))).toEqual(['store.not-an-export']);
      expect(codes(await to.importGarden('[]'))).toEqual(['store.not-an-export']);
      expect(codes(await to.importGarden(changed({ more: 1 })))).toEqual(['store.not-an-export']);
      expect(codes(await to.importGarden(changed({ version: 2 })))).toEqual(['store.newer-export']);
      expect(codes(await to.importGarden(changed({ photos: [photo] })))).toEqual(['store.photo-differs']);
      expect(codes(await to.importGarden(changed({ photos: [] })))).toEqual(['store.no-photo']);
      const stray = changed({
        entries: [{ ...file.entries[0], garden: file.entries[1].id }, ...file.entries.slice(1)],
      });
      expect(codes(await to.importGarden(stray))).toEqual(['store.wrong-garden']);
      const bad = changed({ entries: [...file.entries, { ...file.entries[1], action: 'burn' }] });
      expect(problems(await to.importGarden(bad))[0]?.field).toBe('entries[7].action');
      expect(value(await to.gardens())).toEqual([]);
      expect(value(await to.check())).toMatchObject({ entries: 0, photos: 0 });
      const other = changed({ entries: [{ ...file.entries[0], by: 'eve' }] });
      expect(codes(await from.importGarden(other))).toEqual(['store.same-id']);
    });

    it('leaves photos out when asked', async () => {
      const store = await open();
      const garden = await fullGarden(store, 42);
      const text = value(await store.exportGarden(garden, { photos: false }));
      expect(JSON.parse(text).photos).toEqual([]);
      expect(value(await store.importGarden(text)).known).toBe(7);
    });
  });

  describe('photos', () => {
    it('are kept under the SHA-256 of their bytes, once', async () => {
      const store = await open();
      const bytes = new TextEncoder().encode('abc');
      const { hash } = value(await store.putPhoto('image/webp', bytes));
      // FIPS 180-4, example of the message "abc".
      expect(hash).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
      expect(value(await store.putPhoto('image/png', bytes)).hash).toBe(hash);
      const photo = value(await store.photo(hash));
      expect(photo?.type).toBe('image/webp');
      expect([...(photo?.bytes ?? [])]).toEqual([...bytes]);
      expect(value(await store.photo('0'.repeat(64)))).toBeUndefined();
      expect(codes(await store.putPhoto('text/html', bytes))).toEqual(['store.photo-type']);
      expect(codes(await store.putPhoto('image/png', new Uint8Array()))).toEqual(['store.empty-photo']);
      expect(value(await store.check()).photos).toBe(1);
    });

    it('must be there before an entry shows them', async () => {
      const store = await open();
      const { add } = await bedOf(store, 43);
      const seen = add('observation', { date: '2026-02-07', photos: ['0'.repeat(64)] });
      expect(codes(await store.append([seen]))).toEqual(['store.no-photo']);
    });
  });
}
