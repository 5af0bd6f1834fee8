import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkSoilTest } from '../evidence/check-soil-test.ts';
import type { SoilTest } from '../evidence/soil-test.ts';
import { plainlySound } from './quick-check.ts';
import { rowReader } from './row.ts';

const defaults = { today: '2026-11-01' };
const header = ['place', 'date', 'area', 'depth', 'texture', 'om', 'ph', 'buffer_ph', 'buffer', 'magnesium', 'plants'];
const row = ['Bed 1', '2026-09-14', '4 x 8 ft', '6 in', 'loam', '4,2', '5.4', '6.3', 'sikora', '62', 'tomato; carrot'];
const reader = rowReader(header, defaults);
const change = (column: string, cell: string) => reader.read(row.with(header.indexOf(column), cell), 1);

describe('rows of a table of soil tests', () => {
  it('reads a good row into SI', () => {
    const read = reader.read(row, 1);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.place.area).toBeCloseTo(32 * 0.3048 ** 2, 9);
    expect(read.place.depth).toBeCloseTo(0.1524, 9);
    expect(read.place.organicMatter).toBeCloseTo(0.042, 9);
    expect(read.place.plants.map((plant) => plant.name)).toEqual(['Tomato', 'Carrot']);
    expect(read.place.tests[0]?.buffer).toEqual({ value: 6.3, method: 'sikora' });
  });
  it.each([
    ['ph', '45'],
    ['ph', 'sour'],
    ['buffer_ph', '9.1'],
    ['depth', '-6 in'],
    ['depth', '6 lb'],
    ['area', '32'],
    ['texture', 'lome'],
    ['om', '104'],
    ['date', '2026-13-01'],
    ['date', '2027-01-01'],
    ['plants', 'tomatto'],
    ['magnesium', 'lots'],
    ['buffer', ''],
  ])('%s "%s" is reported with place, field, value and fix, and gives no place', (column, cell) => {
    const read = change(column, cell);
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.problems[0]).toMatchObject({
      place: 'Bed 1',
      field: expect.stringContaining(column.split('_')[0] ?? ''),
    });
    for (const each of read.problems) expect(`${each.message}${each.fix}`).not.toMatch(/\{\w+\}|undefined|NaN/);
  });
  it('keeps the fault of one row out of the next', () => {
    expect(change('ph', '45').ok).toBe(false);
    expect(reader.read(row, 2).ok).toBe(true);
  });
  it('does not move cells of a row that lost a comma', () => {
    const read = reader.read(row.slice(1), 7);
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.problems[0]?.code).toBe('document.row-width');
  });
  it('names the nearest column for one it does not know', () => {
    const { problems } = rowReader(['place', 'ph', 'bufer_ph'], defaults);
    expect(problems).toHaveLength(1);
    expect(problems[0]?.fix).toContain('buffer_ph');
  });
  it('takes a single target as a range around it', () => {
    const read = rowReader(['ph', 'target'], defaults).read(['5.4', '6.5'], 1);
    expect(read.ok && read.place.target).toEqual({ low: 6, high: 7, aim: 6.5 });
  });
});

describe('plainlySound', () => {
  const figure = (max: number) => fc.option(fc.double({ min: -0.1, max, noNaN: true }), { nil: undefined });
  const test = fc.record({
    date: fc.constantFrom('2026-09-14', '2026-02-30', '2027-01-01', 'x'),
    ph: fc.double({ min: 0, max: 14, noNaN: true }),
    buffer: fc.double({ min: 4, max: 9, noNaN: true }),
    method: fc.constantFrom('smp' as const, 'sikora' as const, 'mehlich' as const, 'woodruff' as const),
    depth: fc.double({ min: -0.1, max: 2, noNaN: true }),
    cec: figure(2),
    magnesium: figure(2),
    organicMatter: figure(1.5),
    carbonate: figure(1.5),
    lead: figure(1),
    conductivity: figure(10),
  });
  it('never passes a test the full check would fault', () => {
    fc.assert(
      fc.property(test, ({ date, ph, buffer, method, depth, ...rest }) => {
        const given = Object.fromEntries(Object.entries(rest).filter(([, value]) => value !== undefined));
        const made: SoilTest = {
          id: 't',
          date,
          instrument: 'laboratory',
          depth,
          ph: { value: ph, method: 'water-1:1' },
          buffer: { value: buffer, method },
          ...given,
        };
        if (plainlySound(made, defaults.today)) expect(checkSoilTest(made, 'p', 't', defaults.today)).toEqual([]);
      }),
      { numRuns: 3000 },
    );
  });
});
