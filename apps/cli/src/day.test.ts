import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse as parseCsv } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { type Built, built } from '../testing/built.ts';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const demo = parse(readFileSync(`${root}demo/sour-ground-heavy-rain.yaml`, 'utf8'));
let cli: Built;
beforeAll(async () => {
  cli = await built();
});
afterAll(() => cli.remove());

describe('sorrel day', () => {
  it('plans the samples and writes every paper and table', () => {
    const garden = join(cli.folder, 'day.json');
    const places = demo.places.slice(0, 4).map((place: object, index: number) => ({
      ...place,
      sample: { code: `A${index + 1}`, person: `Person${index}` },
    }));
    writeFileSync(garden, JSON.stringify({ ...demo, soilDay: { date: '2026-11-21' }, places }));
    const file = (name: string) => join(cli.folder, name);
    const { stdout, stderr, status } = cli.run([
      ...['day', garden, '--as-of', '2026-11-25', '--handouts', file('h.pdf'), '--merge', file('m.csv')],
      ...['--summary', file('s.pdf'), '--anonymous', file('a.csv'), '--contact', 'Anna, 555-0100'],
    ]);
    expect([status, stdout.split('\n')[0]]).toEqual([0, '4 samples planned.']);
    expect(stderr.match(/^Written: /gm)).toHaveLength(4);
    // ISO 32000-2, 7.5.2: a PDF begins with its version.
    for (const name of ['h.pdf', 's.pdf']) expect(readFileSync(file(name), 'latin1').slice(0, 5)).toBe('%PDF-');
    const rows = parseCsv(readFileSync(file('m.csv'), 'utf8'), { columns: true }) as { code: string }[];
    expect(rows.map(({ code }) => code)).toEqual(['A1', 'A2', 'A3', 'A4']);
    expect(readFileSync(file('a.csv'), 'utf8')).not.toContain('Person');
  });

  it('says when no place is a sample', () => {
    const { stderr, status } = cli.run(['day', `${root}demo/sour-ground-heavy-rain.yaml`]);
    expect([status, stderr]).toEqual([2, expect.stringContaining('No place of this garden is a sample')]);
  });
});
