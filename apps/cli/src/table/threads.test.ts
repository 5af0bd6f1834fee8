import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Built, built } from '../../testing/built.ts';

/** Over the size from which other threads are asked, with bad rows, quotes and a line feed inside a cell. */
function rows(): string[] {
  const textures = ['sand', 'loam', 'clay loam', 'silt loam', 'no such soil'];
  const filler = 'invented '.repeat(14);
  return Array.from({ length: 14_000 }, (_, i) => {
    const name = i % 50 === 7 ? `"Bed, ""the ${i}th""\nby the wall"` : `Bed ${i}`;
    const ph = i % 97 === 0 ? 45 : (4.4 + ((i * 7) % 34) / 10).toFixed(1);
    return `${name},2026-09-${10 + (i % 18)},${textures[i % (i % 90 === 0 ? 5 : 4)]},${1 + (i % 6)},${ph},${(5.6 + (i % 12) / 10).toFixed(1)},sikora,tomato;carrot,${1 + (i % 9)} m2,${filler}`;
  });
}

let cli: Built;
let file = '';
beforeAll(async () => {
  cli = await built();
  file = join(cli.folder, 'tests.csv');
  writeFileSync(file, `place,date,texture,om,ph,buffer_ph,buffer,plants,area,note\n${rows().join('\n')}\n`);
});
afterAll(() => cli.remove());

const table = (...args: string[]) => cli.run(['table', file, '--as-of', '2026-11-01', ...args]);

describe('sorrel table over several threads', () => {
  it('gives the same rows in the same order, and the same bad rows, as over one', () => {
    const bad = (name: string) => join(cli.folder, name);
    const one = table('--threads', '1', '--bad', bad('one.csv'));
    const three = table('--threads', '3', '--bad', bad('three.csv'));
    expect(one.stdout.split('\r\n').length).toBeGreaterThan(13_000);
    expect([three.stdout.length, three.stderr.slice(0, 400), three.status, String(three.error)]).toEqual([
      one.stdout.length,
      one.stderr.slice(0, 400),
      one.status,
      String(one.error),
    ]);
    expect(three.stderr).toBe(one.stderr);
    expect(three.status).toBe(1);
    expect(readFileSync(bad('three.csv'), 'utf8') === readFileSync(bad('one.csv'), 'utf8')).toBe(true);
  });
  it('passes over a byte order mark', () => {
    const head = `${readFileSync(file, 'utf8').split('\n').slice(0, 3).join('\n')}\n`;
    const plain = join(cli.folder, 'plain.csv');
    const marked = join(cli.folder, 'marked.csv');
    writeFileSync(plain, head);
    writeFileSync(marked, `\ufeff${head}`);
    const run = (name: string) => cli.run(['table', name, '--as-of', '2026-11-01']);
    expect(run(plain).stdout).toContain('Bed 1,');
    expect([run(marked).stdout, run(marked).status]).toEqual([run(plain).stdout, run(plain).status]);
  });
  it('writes lines of JSON just as well', () => {
    const { stdout } = table('--json', '--threads', '2');
    const rows = stdout.trimEnd().split('\n');
    const lines = rows.map((row) => (JSON.parse(row) as { line: number }).line);
    expect(lines).toEqual([...lines].sort((a, b) => a - b));
  });
  it('says what a number of threads may be', () => {
    const run = table('--threads', 'many');
    expect(run.status).toBe(64);
    expect(run.stderr).toContain('--threads takes a whole number');
  });
});
