import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isSource } from '@sorrel/almanac';
import { afterAll, describe, expect, it } from 'vitest';
import { adapters } from './adapters/index.ts';
import { accepting, judge } from './judge.ts';
import { reportPage } from './report.ts';
import { readReasons, runFile, shippedFiles } from './shipped.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const results = shippedFiles.map((file) => runFile(file, adapters));
const outcomes = results.flatMap((result) => result.outcomes);

describe('the published cases', () => {
  it('are all read: 351 in six files, each with an id of its own and sources that exist', () => {
    expect(results.flatMap(({ bad }) => bad)).toEqual([]);
    expect([results.length, outcomes.length]).toEqual([6, 351]);
    expect(new Set(outcomes.map(({ check }) => check.id)).size).toBe(351);
    const keys = outcomes.flatMap(({ check }) => check.source.split(';').map((key) => key.trim()));
    expect(keys.filter((key) => !isSource(key))).toEqual([]);
  });

  it('miss or cannot be computed exactly where reasons.csv says so and why', () => {
    const found = outcomes.filter(({ state }) => state !== 'within').map(({ check, state }) => `${check.id} ${state}`);
    const listed = [...readReasons()].map(([id, { state }]) => `${id} ${state}`);
    expect(found.sort()).toEqual(listed.sort());
    for (const [id, { reason }] of readReasons()) expect(reason.length, id).toBeGreaterThan(15);
  });

  it('come out the same whichever of the adapters that take a case computes it', () => {
    for (const { check, state } of outcomes)
      for (const adapter of accepting(check, adapters))
        expect([check.id, adapter.name, judge(check, [adapter]).state]).toEqual([check.id, adapter.name, state]);
  });

  it('are recognised by shape: changed ids, titles and notes change nothing', () => {
    // This sum names its element nowhere but in its heading.
    const named = new Set(['practice-03']);
    for (const { check, adapter } of outcomes) {
      const title = named.has(check.id) ? check.title : 'other';
      const stranger = { ...check, id: 'other', title, note: 'other' };
      expect([check.id, accepting(stranger, adapters)[0]?.name]).toEqual([check.id, adapter]);
    }
  });

  it('stand on their page as they are now (else run `npm run check:published`)', () => {
    expect(readFileSync(`${root}docs/published-checks.md`, 'utf8')).toBe(reportPage(results, readReasons()));
  });
});

describe('the command', () => {
  const folder = mkdtempSync(join(tmpdir(), 'sorrel-checks-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const run = (...args: string[]) =>
    spawnSync(process.execPath, ['--import', 'tsx', 'checks/run.ts', ...args], { cwd: root, encoding: 'utf8' });
  const closing =
    /^published: \d+ of \d+ within tolerance \(memory: \d+ of \d+, derived: \d+ of \d+, not computable: \d+\)$/;

  it('runs any other file of the same columns, lists what it cannot compute, and closes with the count', () => {
    const file = join(folder, 'mine.csv');
    writeFileSync(
      file,
      [
        'id,case,inputs_json,expected_json,tolerance,source,basis,note',
        'm1,lime in two,"{""lb_per_100sqft"": 16, ""situation"": ""garden""}","{""applications"": 2, ""each"": 8, ""gap_months"": 6}",0,own,read,',
        'm2,wrong on purpose,"{""lb_per_100sqft"": 16, ""situation"": ""garden""}","{""applications"": 3}",0,own,read,',
        'm3,nobody can,"{""wishes"": 3}","{""granted"": 0}",0,own,read,',
        'm4,broken,"{""wishes"": 3","{""granted"": 0}",0,own,read,',
      ].join('\n'),
    );
    const { stdout, status } = run(file);
    expect(status).toBe(0);
    expect(stdout).toMatch(/ok {2}m1/);
    expect(stdout).toMatch(/MISS {2}m2/);
    expect(stdout).toMatch(/No way to compute:\n {2}m3/);
    expect(stdout).toMatch(/line 5 \(m4\): inputs_json is not JSON/);
    expect(stdout.trimEnd().split('\n').at(-1)).toBe(
      'published: 1 of 2 within tolerance (memory: 0 of 0, derived: 0 of 0, not computable: 1)',
    );
  });

  it('ends with 2 when a file cannot be read, and still runs the others', () => {
    const other = join(folder, 'prices.csv');
    writeFileSync(other, 'name,price\nlime,3\n');
    const { stdout, stderr, status } = run(join(folder, 'nowhere.csv'), other, shippedFiles[3] as string);
    expect(status).toBe(2);
    expect(stderr).toMatch(/nowhere\.csv cannot be read/);
    expect(stderr).toMatch(/prices\.csv cannot be read: no column id/);
    expect(stdout).toMatch(/materials\.csv/);
    expect(stdout.trimEnd().split('\n').at(-1)).toMatch(closing);
  });
});
