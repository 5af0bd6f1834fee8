import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { startPostgres, type TestServer } from '@sorrel/store/testing';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { buildCli } from '../build.mjs';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const demo = `${root}demo/rooftop-containers.yaml`;
// Below the workspace, where the packages that stay outside the bundle are found.
const dist = `${root}.cache/cli-${process.pid}`;
let folder = '';
let cluster: TestServer;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'sorrel-record-'));
  await buildCli(dist);
  cluster = await startPostgres();
});
afterAll(async () => {
  await cluster?.stop();
  for (const each of [folder, dist]) rmSync(each, { recursive: true, force: true });
});

const sorrel = (...args: string[]) =>
  spawnSync(process.execPath, [join(dist, 'sorrel.mjs'), ...args], {
    encoding: 'utf8',
    env: { PATH: process.env.PATH, LANG: 'en_US.UTF-8' },
  });

describe.each(['sqlite', 'postgres'])('the record on %s', (kind) => {
  let store = '';
  beforeAll(async () => {
    store = kind === 'sqlite' ? join(folder, 'record.sqlite') : await cluster.database('cli');
  });

  it('takes a garden in, plans it as the document itself, and gives it out again', () => {
    const put = sorrel('import', demo, '--store', store, '--by', 'anna');
    expect([put.stderr, put.status]).toEqual(['', 0]);
    expect(sorrel('gardens', '--store', store).stdout).toContain('Invented rooftop of containers');
    const [ours, theirs] = [
      sorrel('plan', '--store', store, '--garden', 'invented ROOFTOP of containers'),
      sorrel('plan', demo),
    ];
    expect([ours.stdout, ours.stderr, ours.status]).toEqual([theirs.stdout, theirs.stderr, theirs.status]);
    const out = sorrel('export', '--store', store);
    expect(JSON.parse(out.stdout)).toEqual(parse(readFileSync(demo, 'utf8')));
  });

  it('reads its own export in once', () => {
    const record = join(folder, `${kind}.json`);
    writeFileSync(record, sorrel('export', '--store', store, '--record').stdout);
    const other = join(folder, `other-${kind}.sqlite`);
    expect(sorrel('import', record, '--store', other).stdout).toMatch(/ 0 were there already/);
    expect(sorrel('import', record, '--store', other).stdout).toMatch(/: 0 entries were new/);
    expect(sorrel('export', '--store', other, '--record').stdout).toBe(readFileSync(record, 'utf8'));
  });

  it('asks which garden is meant, and says which there are', () => {
    const unknown = sorrel('plan', '--store', store, '--garden', 'Atlantis');
    expect([unknown.status, unknown.stderr]).toEqual([2, expect.stringContaining('no garden called "Atlantis"')]);
    expect(unknown.stderr).toContain('Invented rooftop of containers');
  });
});

describe('what cannot be done', () => {
  it('is said, and leaves nothing behind', () => {
    const missing = join(folder, 'missing.sqlite');
    expect(sorrel('plan', '--store', missing, '--garden', 'x').status).toBe(2);
    expect(sorrel('export', '--store', missing).status).toBe(2);
    expect(existsSync(missing)).toBe(false);
    expect(sorrel('import', demo).status).toBe(64);
    expect(sorrel('plan', demo, '--store', missing).status).toBe(64);
    const bad = join(folder, 'bad.json');
    writeFileSync(bad, JSON.stringify({ garden: 'x', places: [{ name: 'y', depth: '-6 in' }] }));
    const refused = sorrel('import', bad, '--store', missing);
    expect([refused.status, refused.stderr]).toEqual([2, expect.stringContaining('Nothing was put into the record')]);
    expect(existsSync(missing)).toBe(false);
    const other = join(folder, 'notes.sqlite');
    writeFileSync(other, 'a shopping list, and no database at all');
    expect(sorrel('gardens', '--store', other).status).toBe(2);
    expect(readFileSync(other, 'utf8')).toContain('shopping list');
  });
});
