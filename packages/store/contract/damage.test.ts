import {
  closeSync,
  mkdtempSync,
  openSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openStore } from '../src/index.ts';
import { bedOf, codes, value } from './kit.ts';

let folder = '';
let file = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'sorrel-damage-'));
  file = join(folder, 'garden.sqlite');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('when the file is not what it was', () => {
  it('leaves a file alone that is no database, or the database of another program', async () => {
    writeFileSync(file, 'These are the notes of a gardener, not a database.'.repeat(100));
    const before = readFileSync(file);
    expect(codes(await openStore(file))).toEqual(['store.damaged']);
    expect(readFileSync(file).equals(before)).toBe(true);
    const other = join(folder, 'other.sqlite');
    const theirs = new BetterSqlite3(other);
    theirs.exec('create table garden (id text)');
    theirs.close();
    const bytes = readFileSync(other);
    expect(codes(await openStore(other))).toEqual(['store.not-ours']);
    expect(readFileSync(other).equals(bytes)).toBe(true);
  });

  it('finds overwritten pages, keeps answering with problems, and a backup takes its place', async () => {
    const store = value(await openStore(file));
    const { garden, add } = await bedOf(store, 64);
    for (let n = 0; n < 60; n++)
      value(await store.append([add('place', { name: `Bed ${n}`, note: 'x'.repeat(2000) })]));
    const { file: copy } = value(await store.backup({ folder: join(folder, 'backups'), keep: 2 }, '2026-03-01'));
    await store.close();
    const handle = openSync(file, 'r+');
    for (let page = 6; page < 30; page++) writeSync(handle, Buffer.alloc(4096, 0x5a), 0, 4096, page * 4096);
    closeSync(handle);
    const opened = await openStore(file);
    const check = opened.ok ? await opened.value.check() : opened;
    const found = check.ok ? check.value.problems : check.problems;
    expect(found.map((each) => each.code)).toContain('store.damaged');
    if (opened.ok) {
      expect(codes(await opened.value.entries(garden))).toEqual(['store.damaged']);
      await opened.value.close();
    }
    const restored = value(await openStore(copy));
    expect(value(await restored.version(garden))).toBe(62);
    expect(value(await restored.check()).problems).toEqual([]);
    await restored.close();
  });

  it('finds a file that was cut short', async () => {
    const store = value(await openStore(file));
    const { add } = await bedOf(store, 65);
    for (let n = 0; n < 30; n++)
      value(await store.append([add('place', { name: `Bed ${n}`, note: 'x'.repeat(2000) })]));
    await store.close();
    truncateSync(file, Math.floor(statSync(file).size / 2 / 4096) * 4096);
    const opened = await openStore(file);
    const check = opened.ok ? await opened.value.check() : opened;
    expect((check.ok ? check.value.problems : check.problems).map((each) => each.code)).toContain('store.damaged');
    if (opened.ok) await opened.value.close();
  });

  it('keeps all entries before a torn end of the log', async () => {
    const store = value(await openStore(file));
    const { garden, add } = await bedOf(store, 66);
    const stored = join(folder, 'torn.sqlite');
    value(await store.append([add('place', { name: 'Bed 2' })]));
    writeFileSync(stored, readFileSync(file));
    const log = readFileSync(`${file}-wal`);
    writeFileSync(`${stored}-wal`, log.subarray(0, log.length - 100));
    await store.close();
    const torn = value(await openStore(stored));
    expect(value(await torn.version(garden))).toBe(2);
    expect(value(await torn.check()).problems).toEqual([]);
    await torn.close();
  });
});
