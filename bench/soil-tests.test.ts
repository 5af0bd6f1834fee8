import { rowColumns, rowReader } from '@sorrel/engine/document';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { header, testLines } from './soil-tests.ts';

const rows = (count: number, seed?: number) => parse([...testLines(count, seed)].join('')) as string[][];

describe('invented soil tests', () => {
  it('are the same for the same seed and others for another', () => {
    expect([...testLines(50, 7)]).toEqual([...testLines(50, 7)]);
    expect([...testLines(50, 7)]).not.toEqual([...testLines(50, 8)]);
  });

  it('use only columns the table knows, and are nearly all good', () => {
    expect(header.split(',').filter((name) => !rowColumns.includes(name))).toEqual([]);
    const [first = [], ...rest] = rows(2000);
    const reader = rowReader(first, { today: '2026-11-01' });
    const read = rest.map((row, at) => reader.read(row, at + 1));
    const bad = read.filter((result) => !result.ok).length;
    expect(reader.problems).toEqual([]);
    expect(bad / rest.length).toBeGreaterThan(0.005);
    expect(bad / rest.length).toBeLessThan(0.05);
  });
});
