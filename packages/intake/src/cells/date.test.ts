import { format } from 'date-fns';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dateEvidence, readDate } from './date.ts';

const days = fc.date({ min: new Date(2001, 0, 1), max: new Date(2099, 11, 31), noInvalidDate: true });
const forms = [
  ['dd/MM/yyyy', 'day-month-year'],
  ['d.M.yy', 'day-month-year'],
  ['MM/dd/yyyy', 'month-day-year'],
  ['M-d-yyyy', 'month-day-year'],
  ['yyyy/M/d', undefined],
  ['yyyy-MM-dd HH:mm', undefined],
  ['dd-MMM-yyyy', undefined],
  ['d MMMM yyyy', undefined],
  ['MMMM d, yyyy', undefined],
  ['yyyyMMdd', undefined],
] as const;

describe('readDate', () => {
  it('reads back what date-fns writes in each form', () => {
    fc.assert(
      fc.property(days, fc.constantFrom(...forms), (day, [form, order]) => {
        expect(readDate(format(day, form), order)).toBe(format(day, 'yyyy-MM-dd'));
      }),
    );
  });
  // 1 January 2000 is day 36526 in every spreadsheet: common practice, no source.
  it.each([
    ['36526', 'spreadsheet-day', '2000-01-01'],
    ['31/02/2026', 'day-month-year', undefined],
    ['13/13/2026', 'day-month-year', undefined],
    ['03/04/2026', undefined, 'order'],
    ['soon', undefined, undefined],
    ['12', 'spreadsheet-day', undefined],
    ['2026', 'year-month-day', undefined],
  ] as const)('%s by %s is %s', (cell, order, day) => expect(readDate(cell, order)).toBe(day));
});

describe('dateEvidence', () => {
  it('leaves only the orders in which every cell is a day', () => {
    expect(dateEvidence(['03/04/2026', '17/04/2026']).possible).toEqual(['day-month-year']);
    expect(dateEvidence(['17/04/2026', '04/17/2026']).possible).toEqual([]);
    expect(dateEvidence(['03/04/2026', '05/06/2026']).possible).toEqual(['day-month-year', 'month-day-year']);
    expect(dateEvidence(['2026-04-03']).needed).toBe(false);
  });
});
