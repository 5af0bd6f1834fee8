import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CsvRecord, csvCell, csvCutter, csvSplitter, eachRecord } from './csv.ts';

/** The whole text, pushed in pieces of the given lengths. */
function split(text: string, sizes: readonly number[] = [text.length]): string[][] {
  const splitter = csvSplitter();
  const cells: string[][] = [];
  let at = 0;
  for (let i = 0; at < text.length; i++) {
    const size = Math.max(1, sizes[i % sizes.length] ?? 1);
    for (const record of splitter.push(text.slice(at, at + size))) cells.push([...record.cells]);
    at += size;
  }
  for (const record of splitter.end()) cells.push([...record.cells]);
  return cells;
}

// Letters that matter to CSV, often; at least one cell that is not blank, since blank lines are passed over.
const cell = fc.string({ unit: fc.constantFrom('a', 'b', ' ', ',', '"', '\n', '\r\n', 'é', '1'), maxLength: 8 });
const table = fc.array(
  fc.array(cell, { minLength: 1, maxLength: 5 }).map((cells) => [...cells, 'end']),
  { minLength: 1, maxLength: 8 },
);
const quote = (text: string) => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

describe('csvSplitter', () => {
  it('reads what csv-parse reads, however the text is cut into pieces', () => {
    fc.assert(
      fc.property(
        table,
        fc.constantFrom('\n', '\r\n'),
        fc.array(fc.integer({ min: 1, max: 7 }), { minLength: 1 }),
        (rows, end, sizes) => {
          const text = rows.map((row) => row.map(quote).join(',')).join(end) + end;
          const witness = parse(text, { relax_column_count: true, record_delimiter: ['\r\n', '\n'] }) as string[][];
          expect(split(text, sizes)).toEqual(witness);
          expect(split(text, sizes)).toEqual(rows);
        },
      ),
      { numRuns: 500 },
    );
  });
  it('reads quoted cells of a text of any length that comes in one piece', () => {
    const text = 'a,"b, c"\n'.repeat(200_000);
    let whole = 0;
    eachRecord(text, 1, (cells) => {
      if (cells.length === 2 && cells[1] === 'b, c') whole++;
    });
    expect(whole).toBe(200_000);
  });
  it('gives the same records, with the same line numbers, when it is cut into runs first', () => {
    const junk = fc.string({ unit: fc.constantFrom('a', ',', '"', '\n', '\r\n', ' ', 'é'), maxLength: 80 });
    fc.assert(
      fc.property(junk, fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1 }), (text, sizes) => {
        const whole = csvSplitter();
        const cutter = csvCutter();
        const straight: CsvRecord[] = [];
        const runs: ReturnType<typeof cutter.push> = [];
        for (let at = 0, i = 0; at < text.length; i++) {
          const piece = text.slice(at, at + (sizes[i % sizes.length] ?? 1));
          straight.push(...whole.push(piece));
          runs.push(...cutter.push(piece));
          at += piece.length;
        }
        straight.push(...whole.end());
        runs.push(...cutter.end());
        const cut = runs.flatMap((run) => {
          if ('cells' in run) return [{ cells: run.cells, line: run.line }];
          const part = csvSplitter(run.line);
          const records = [...part.push(run.text), ...part.end()];
          expect(records).toHaveLength(run.records);
          return records;
        });
        expect(cut).toEqual(straight);
      }),
      { numRuns: 2000 },
    );
  });
  it('never throws and never loses its way to the last line', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom('a', ',', '"', '\n', '\r', ' '), maxLength: 60 }), (junk) => {
        const tail = Array.from({ length: 60 }, (_, index) => `row,${index}`).join('\n');
        expect(split(`${junk}\n${tail}\n`, [5]).at(-1)).toEqual(['row', '59']);
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
    expect(split(rows.join('\n'), [64])).toHaveLength(200);
  });
  it('counts lines as an editor does, across cells of several lines', () => {
    const splitter = csvSplitter();
    const records = [...splitter.push('\uFEFFa\n\n"1\n2"\nb\n'), ...splitter.end()];
    expect(records).toEqual([
      { cells: ['a'], line: 1 },
      { cells: ['1\n2'], line: 3 },
      { cells: ['b'], line: 5 },
    ]);
  });
});

describe('csvCell', () => {
  it('is read back by csv-parse', () => {
    fc.assert(
      fc.property(
        cell.filter((text) => !/^[=+\-@\t\r]/.test(text) && text !== ''),
        (text) => {
          expect(parse(`${csvCell(text)}\r\n`, { record_delimiter: '\r\n' })).toEqual([[text]]);
        },
      ),
    );
  });
  it('lets no spreadsheet run a cell as a formula', () => {
    expect(csvCell('=1+1')).toBe("'=1+1");
    expect(csvCell('@sum')).toBe("'@sum");
    expect(csvCell(-1.5)).toBe('-1.5');
    expect(csvCell('-1.5')).toBe('-1.5');
  });
});
