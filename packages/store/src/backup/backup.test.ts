import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { bedOf, codes, value, writer } from '../../contract/kit.ts';
import { migrate } from '../database/migrate.ts';
import { openSqlite } from '../database/sqlite.ts';
import { openStore } from '../index.ts';

let folder = '';
const backups = () => join(folder, 'backups');
const file = () => join(folder, 'garden.sqlite');
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'sorrel-backup-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('backup', () => {
  it('is a whole store in one file, made once a day, the newest kept', async () => {
    const store = value(await openStore(file()));
    const { garden } = await bedOf(store, 70);
    const plan = { folder: backups(), keep: 2 };
    const first = value(await store.backup(plan, '2026-03-01'));
    expect(first).toEqual({ file: join(backups(), 'sorrel-2026-03-01.sqlite'), fresh: true, dropped: [] });
    expect(value(await store.backup(plan, '2026-03-01')).fresh).toBe(false);
    writeFileSync(join(backups(), 'sorrel-notes.txt'), 'hers');
    value(await store.backup(plan, '2026-03-02'));
    expect(value(await store.backup(plan, '2026-03-03')).dropped).toEqual(['sorrel-2026-03-01.sqlite']);
    await store.close();
    expect(readdirSync(backups()).sort()).toEqual([
      'sorrel-2026-03-02.sqlite',
      'sorrel-2026-03-03.sqlite',
      'sorrel-notes.txt',
    ]);
    const copy = value(await openStore(join(backups(), 'sorrel-2026-03-02.sqlite')));
    expect(value(await copy.version(garden))).toBe(2);
    await copy.close();
  });

  it('is sound when it is made in the middle of writing', async () => {
    const store = value(await openStore(file()));
    const { garden, add } = await bedOf(store, 71);
    const writing = (async () => {
      for (let n = 0; n < 40; n++)
        value(await store.append([add('place', { name: `Bed ${n}`, note: 'x'.repeat(5000) })]));
    })();
    const { file: copy } = value(await store.backup({ folder: backups(), keep: 1 }, '2026-03-01'));
    await writing;
    await store.close();
    const opened = value(await openStore(copy));
    const checked = value(await opened.check());
    expect(checked.problems).toEqual([]);
    expect(value(await opened.version(garden))).toBe(checked.entries);
    await opened.close();
  });

  it('says why it failed and leaves no half of it', async () => {
    const store = value(await openStore(file()));
    writeFileSync(backups(), 'a file where the folder should be');
    expect(codes(await store.backup({ folder: backups(), keep: 1 }, '2026-03-01'))).toEqual(['store.backup-failed']);
    await expect(store.backup({ folder: backups(), keep: 0 }, '2026-03-01')).rejects.toThrow(RangeError);
    await store.close();
    expect(readdirSync(folder).filter((name) => name.includes('.part'))).toEqual([]);
  });

  it('comes by itself before the first change of each day, and does not stop the work when it fails', async () => {
    let day = '2026-03-01';
    const heard: string[] = [];
    const store = value(
      await openStore(file(), {
        backups: {
          folder: backups(),
          keep: 5,
          today: () => day,
          told: (result) => heard.push(result.ok ? result.value.file : (result.problems[0]?.code ?? '')),
        },
      }),
    );
    const { garden, add } = await bedOf(store, 72);
    value(await store.append([add('place', { name: 'Bed 2' })]));
    day = '2026-03-02';
    value(await store.append([add('place', { name: 'Bed 3' })]));
    expect(heard).toEqual(['2026-03-01', '2026-03-02'].map((each) => join(backups(), `sorrel-${each}.sqlite`)));
    const copy = value(await openStore(heard[1] ?? ''));
    expect(value(await copy.version(garden))).toBe(3);
    await copy.close();
    rmSync(backups(), { recursive: true });
    writeFileSync(backups(), 'a file where the folder should be');
    day = '2026-03-03';
    value(await store.append([add('place', { name: 'Bed 4' })]));
    expect(heard[2]).toBe('store.backup-failed');
    await store.close();
  });

  it('is made before the tables of an older version are changed', async () => {
    const old = openSqlite(file());
    await migrate(old.db, 'sqlite', '0001-record');
    const [garden] = [writer(73).addGarden()];
    await old.db.insertInto('garden').values({ id: garden.id, version: 1 }).execute();
    await old.db
      .insertInto('entry')
      .values({ garden: garden.id, number: 1, id: garden.id, body: JSON.stringify(garden) })
      .execute();
    await old.close();
    await value(await openStore(file())).close();
    const copy = openSqlite(`${file()}.before-upgrade-1`);
    expect(await copy.db.selectFrom('entry').select('id').execute()).toEqual([{ id: garden.id }]);
    expect(copy.raw.prepare(`select 1 from sqlite_schema where name = 'photo'`).get()).toBeUndefined();
    await copy.close();
    await value(await openStore(file())).close();
    expect(existsSync(`${file()}.before-upgrade-2`)).toBe(false);
  });
});
