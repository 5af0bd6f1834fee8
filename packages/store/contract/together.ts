import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { migrate, migrations } from '../src/database/migrate.ts';
import type { Store } from '../src/index.ts';
import { openStore } from '../src/index.ts';
import { bedOf, codes, value, writer } from './kit.ts';
import type { Bench } from './stores.ts';

export function togetherContract(bench: Bench): void {
  describe('several at once', () => {
    it('keeps every entry of writers who write at the same time, numbered without a gap', async () => {
      const where = await bench.place();
      const stores = [await bench.openAt(where), await bench.openAt(where), await bench.openAt(where)];
      const { garden } = await bedOf(stores[0] as Store, 50);
      const sent = stores.map((_, index) => {
        const { add } = writer(500 + index, `person ${index}`);
        return Array.from({ length: 15 }, (_, n) => ({ ...add('place', { name: `${index}.${n}` }), garden }));
      });
      const same = { ...writer(599).add('place', { name: 'sent by all' }), garden };
      await Promise.all(
        stores.map(async (store, index) => {
          for (const entry of sent[index] ?? []) value(await store.append([entry]));
          value(await store.append([same]));
        }),
      );
      for (const store of stores) {
        const entries = value(await store.entries(garden));
        expect(entries.map((each) => each.number)).toEqual(Array.from({ length: 48 }, (_, n) => n + 1));
        expect(new Set(entries.map((each) => each.entry.id)).size).toBe(48);
        for (const own of sent) {
          const mine = new Set(own.map((entry) => entry.id));
          expect(entries.filter((each) => mine.has(each.entry.id)).map((each) => each.entry)).toEqual(own);
        }
      }
      expect(value(await (stores[0] as Store).check()).problems).toEqual([]);
    });

    it('opens an empty database from several programs at once', async () => {
      const where = await bench.place();
      const stores = await Promise.all([1, 2, 3].map(() => bench.openAt(where)));
      await bedOf(stores[0] as Store, 51);
      for (const store of stores) expect(value(await store.gardens())).toHaveLength(1);
    });
  });

  describe('the tables', () => {
    it('are brought up to date from every older version, with all that is in them', async () => {
      const names = Object.keys(migrations(bench.kind));
      for (const older of names.slice(0, -1)) {
        const where = await bench.place();
        const raw = bench.raw(where);
        await migrate(raw.db, raw.kind, older);
        const { addGarden, add } = writer(52);
        const entries = [addGarden(), add('place', { name: 'Old bed' })];
        const garden = entries[0]?.garden ?? '';
        await raw.db.insertInto('garden').values({ id: garden, version: 2 }).execute();
        for (const [index, entry] of entries.entries())
          await raw.db
            .insertInto('entry')
            .values({
              garden,
              number: index + 1,
              id: entry.id,
              body: JSON.stringify(entry),
            })
            .execute();
        await raw.close();
        const store = await bench.openAt(where);
        expect(value(await store.check())).toMatchObject({ gardens: 1, entries: 2, problems: [] });
        expect(value(await store.assemble(garden)).document.places).toEqual([{ name: 'Old bed' }]);
      }
    });

    it('of a newer version are left alone', async () => {
      const where = await bench.place();
      await (await bench.openAt(where)).close();
      const raw = bench.raw(where);
      await sql`insert into kysely_migration (name, timestamp) values ('9999-later', 'later')`.execute(raw.db);
      await raw.close();
      expect(codes(await openStore(where))).toEqual(['store.newer']);
    });

    it('refuse to change or delete an entry or a photo, whoever asks', async () => {
      const where = await bench.place();
      const store = await bench.openAt(where);
      const { garden } = await bedOf(store, 53);
      value(await store.putPhoto('image/png', Uint8Array.of(1)));
      const raw = bench.raw(where);
      for (const attempt of [
        sql`update entry set body = ''`,
        sql`delete from entry`,
        sql`update photo set type = ''`,
        sql`delete from photo`,
      ])
        await expect(attempt.execute(raw.db)).rejects.toThrow('never changed or deleted');
      await raw.close();
      expect(value(await store.version(garden))).toBe(2);
    });

    it('that were tampered with are found out', async () => {
      const where = await bench.place();
      const store = await bench.openAt(where);
      const { garden, id } = await bedOf(store, 54);
      const raw = bench.raw(where);
      await raw.db.insertInto('entry').values({ garden, number: 4, id: id(), body: '{}' }).execute();
      await raw.db
        .insertInto('photo')
        .values({ hash: 'f'.repeat(64), type: 'image/png', size: 1, bytes: Buffer.of(1) })
        .execute();
      await raw.close();
      const found = value(await store.check()).problems.map((each) => each.code);
      expect(found.filter((code) => code === 'store.disagrees').length).toBe(3);
      expect(found).toContain('store.not-an-entry');
    });
  });
}
