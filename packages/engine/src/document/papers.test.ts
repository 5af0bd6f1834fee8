import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { readGarden } from './read-garden.ts';
import { rowColumns } from './row-columns.ts';
import { bufferKinds, phMethods } from './word-lists.ts';

const paper = (name: string): string => readFileSync(new URL(`../../../../docs/${name}`, import.meta.url), 'utf8');

describe('the papers on what may be written', () => {
  it('the example garden is read without a problem', () => {
    const example = /```yaml\n([\s\S]*?)```/.exec(paper('garden-document.md'))?.[1] ?? '';
    const read = readGarden(parse(example), { today: '2026-11-01' });
    expect(read.problems).toEqual([]);
    expect(read.garden.places[0]?.applications).toHaveLength(1);
    expect(read.garden.places[0]?.plants).toHaveLength(3);
  });
  it('the table of columns names every column, pH method and buffer', () => {
    const text = paper('soil-test-table.md');
    for (const column of rowColumns) expect(text, column).toContain(`\`${column}\``);
    for (const word of [...phMethods, ...bufferKinds]) expect(text, word).toContain(word);
  });
});
