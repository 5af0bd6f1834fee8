import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutter, eachRecord, recordsOf } from './cut.ts';
import { splitter } from './split.ts';

const delimiters = fc.constantFrom(',', ';', '\t', '|');
const cell = fc.string({ unit: fc.constantFrom('a', '5', ',', ';', '\t', '|', '"', '\n', ' ', 'é'), maxLength: 6 });
const table = fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 8 });
const write = (rows: readonly (readonly string[])[], delimiter: string) =>
  rows.map((row) => row.map((each) => `"${each.replaceAll('"', '""')}"`).join(delimiter)).join('\r\n');

function pieces(text: string, sizes: readonly number[]): string[] {
  const found: string[] = [];
  let at = 0;
  for (let turn = 0; at < text.length; turn++) {
    const size = sizes[turn % sizes.length] ?? 1;
    found.push(text.slice(at, at + size));
    at += size;
  }
  return found;
}

describe('splitter', () => {
  it('reads what csv-parse reads, with any delimiter and cut into any pieces', () => {
    fc.assert(
      fc.property(
        table,
        delimiters,
        fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1 }),
        (rows, delimiter, sizes) => {
          const text = write(rows, delimiter);
          const expected = parse(text, { delimiter, relax_column_count: true }) as string[][];
          const split = splitter(delimiter);
          const found = [...pieces(text, sizes).flatMap((piece) => split.push(piece)), ...split.end()];
          expect(found.map(({ cells }) => cells)).toEqual(expected);
        },
      ),
    );
  });
});

it('reads quoted cells of a text of any length that comes in one piece', () => {
  const split = splitter(';');
  const records = [...split.push('a;"b; c"\n'.repeat(200_000)), ...split.end()];
  expect(records).toHaveLength(200_000);
  expect(records.every(({ cells, torn }) => cells[1] === 'b; c' && torn === undefined)).toBe(true);
});

describe('splitter, of what is wrong', () => {
  const split = (text: string, size = text.length): string[][] => {
    const whole = splitter(',');
    return [...pieces(text, [size]).flatMap((piece) => whole.push(piece)), ...whole.end()].map(({ cells }) => [
      ...cells,
    ]);
  };
  it('never throws and never loses its way to the last line', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom('a', ',', '"', '\n', '\r', ' '), maxLength: 60 }), (junk) => {
        const tail = Array.from({ length: 60 }, (_, index) => `row,${index}`).join('\n');
        expect(split(`${junk}\n${tail}\n`, 5).at(-1)).toEqual(['row', '59']);
      }),
    );
  });
  it('keeps a lost or an extra comma in its own row', () => {
    expect(split('a,b,c\n1,2\n3,4,5,6\n7,8,9')).toEqual([
      ['a', 'b', 'c'],
      ['1', '2'],
      ['3', '4', '5', '6'],
      ['7', '8', '9'],
    ]);
  });
  it('gives up one line, not the file, to a quote that is never closed', () => {
    const rows = Array.from({ length: 200 }, (_, index) => `${index},x`);
    rows[10] = '"10,x';
    expect(split(rows.join('\n'), 64)).toHaveLength(200);
  });
  it('counts lines as an editor does, across cells of several lines', () => {
    const whole = splitter(',');
    expect([...whole.push('a\n\n"1\n2"\nb\n'), ...whole.end()]).toEqual([
      { cells: ['a'], line: 1 },
      { cells: ['1\n2'], line: 3 },
      { cells: ['b'], line: 5 },
    ]);
  });
});

describe('cutter', () => {
  it('loses nothing: its runs hold the records that the splitter finds, with their lines', () => {
    const wild = fc.string({ unit: fc.constantFrom('a', ';', '"', '\n', '\r', ' ', '5'), maxLength: 60 });
    fc.assert(
      fc.property(wild, fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1 }), (text, sizes) => {
        const whole = splitter(';');
        const expected = [...whole.push(text), ...whole.end()];
        const cut = cutter(';');
        const runs = [...pieces(text, sizes).flatMap((piece) => cut.push(piece)), ...cut.end()];
        expect(runs.flatMap((run) => recordsOf(run, ';'))).toEqual(expected);
        const again: unknown[] = [];
        for (const run of runs) eachRecord(run, ';', (record) => again.push({ ...record, cells: [...record.cells] }));
        expect(again).toEqual(expected);
        expect(runs.reduce((sum, run) => sum + run.records, 0)).toBe(expected.length);
      }),
      { numRuns: 2000 },
    );
  });
});
