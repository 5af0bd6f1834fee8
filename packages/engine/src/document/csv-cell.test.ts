import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { csvCell } from './csv-cell.ts';

it('is read back by csv-parse', () => {
  const cell = fc.string({ unit: fc.constantFrom('a', 'b', ' ', ',', '"', '\n', '\r\n', 'é', '1'), maxLength: 8 });
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
  expect(csvCell(undefined)).toBe('');
});
