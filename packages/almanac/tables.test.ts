import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { cite } from './src/sources.ts';
import { checkTables } from './tables.ts';

const data = fileURLToPath(new URL('./data/', import.meta.url));
const names = readdirSync(data).map((file) => file.slice(0, -4));
const read = (name: string) => readFileSync(`${data}${name}.csv`, 'utf8');

describe('the almanac', () => {
  it('has a schema for every table, and every row passes it with a source that resolves', async () => {
    const { problems } = await checkTables(names, read);
    expect(problems).toEqual([]);
  });

  it('names table, line and key when a row cites a source nobody listed', async () => {
    const { problems } = await checkTables(['sources', 'materials'], (name) =>
      name === 'sources' ? 'key,title,institution,year,address,note\nA,Title,,,,\n' : read(name),
    );
    expect(problems[0]).toMatch(/materials\.csv line 2: source .* is not in sources\.csv/);
  });

  it('prints a citation that a reader can follow', () => {
    expect(cite('Thompson2010')).toContain('2010');
    expect(cite('nobody')).toContain('unknown source');
  });
});
