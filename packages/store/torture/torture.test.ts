import { rmSync } from 'node:fs';
import { setTimeout } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { value } from '../contract/kit.ts';
import { openSqlite } from '../src/database/sqlite.ts';
import { openStore } from '../src/index.ts';
import { tortureDay } from './day-rounds.ts';
import { inspect } from './inspect.ts';
import { torture } from './rounds.ts';
import { makeTargets, type Targets } from './targets.ts';
import { buildWriter, startWriter } from './victim.ts';
import { entryOf } from './work.ts';

// The short version of `npm run torture`.
describe('killed in the middle of the work', () => {
  let bench: Targets | undefined;
  beforeAll(async () => {
    await buildWriter();
    bench = await makeTargets();
  }, 120_000);
  afterAll(() => bench?.stop(), 120_000);

  it.each([
    ['SQLite, writer killed', 8],
    ['PostgreSQL, writer killed', 4],
    ['PostgreSQL, server killed', 4],
  ])('%s: loses nothing that was acknowledged', async (name, times) => {
    const target = bench?.targets.find((each) => each.name === name);
    if (target === undefined) throw new RangeError(name);
    const outcome = await torture(target, times, 7);
    expect(outcome.faults).toEqual([]);
    expect(outcome.acknowledged).toBeGreaterThan(0);
  });

  it.each([
    ['SQLite, writer killed', 1],
    ['PostgreSQL, writer killed', 2],
  ])('%s: plans each sample of a soil day once, with %i programs at it', async (name, programs) => {
    const target = bench?.targets.find((each) => each.name === name);
    if (target === undefined) throw new RangeError(name);
    const outcome = await tortureDay(target, { samples: 120, programs, kills: 4, seed: 21 });
    expect(outcome.faults).toEqual([]);
    expect(outcome.kills).toBeGreaterThan(0);
    expect(outcome.told).toBeGreaterThan(60);
  });

  it('shares a soil day between two programs on one PostgreSQL', async () => {
    const target = bench?.targets.find((each) => each.name === 'PostgreSQL, writer killed');
    if (target === undefined) throw new RangeError('no target');
    const outcome = await tortureDay(target, { samples: 400, programs: 2, kills: 0, seed: 22 });
    expect(outcome.faults).toEqual([]);
    expect(outcome.told).toBe(400);
    expect(Math.min(...outcome.shares)).toBeGreaterThan(20);
  });

  it('loses nothing when the disk takes no more', async () => {
    const where = (await bench?.targets[0]?.place()) ?? '';
    const said = await startWriter(where, 6, 0, 300).gone;
    expect(['store.write-failed', 'store.disk-full']).toContain(said.lost);
    expect(said.entries.length).toBeGreaterThan(10);
    expect((await inspect(where, 6, said.entries, said.photos)).faults).toEqual([]);
  });

  it('takes several programs that open, upgrade and write one file at once', async () => {
    const where = (await bench?.targets[0]?.place()) ?? '';
    const seeds = [11, 12, 13];
    const writers = seeds.map((seed) => startWriter(where, seed, 0));
    await Promise.all(writers.map((each) => each.firstWord));
    await setTimeout(100);
    for (const each of writers) each.kill();
    for (const [index, each] of writers.entries()) {
      const said = await each.gone;
      expect(said.lost).toBeUndefined();
      expect(said.entries.length).toBeGreaterThan(0);
      expect((await inspect(where, seeds[index] ?? 0, said.entries, said.photos)).faults).toEqual([]);
    }
  });

  it('would notice an entry that was lost, changed or stored in part', async () => {
    const where = (await bench?.targets[0]?.place()) ?? '';
    const store = value(await openStore(where));
    value(await store.append([0, 1, 2].map((number) => entryOf(5, number))));
    await store.close();
    expect((await inspect(where, 5, [0, 1, 2, 3], [])).faults).toContain('entry 3 was acknowledged and is missing');
    expect((await inspect(where, 5, [0], [])).faults.join()).toMatch(/of a part of|stored twice/);
    expect((await inspect(where, 5, [0], ['0'.repeat(64)])).faults.join()).toContain('photo');
    const raw = openSqlite(where);
    raw.raw.exec(`drop trigger entry_no_update; update entry set body = replace(body, 'Bed 1', 'Bed 9')`);
    await raw.close();
    expect((await inspect(where, 5, [0, 1], [])).faults).toContain('entry 1 was acknowledged and is changed');
    rmSync(where, { force: true });
  });
});
