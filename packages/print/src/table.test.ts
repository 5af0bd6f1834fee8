import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planned } from '../testing/demo-gardens.ts';
import { csvText } from './csv.ts';
import { table } from './index.ts';

const { garden, plan } = planned('sour-ground-heavy-rain');

describe('tables', () => {
  it('hold every dressing, its mass never above the plan’s', () => {
    const rows: Record<string, string>[] = parse(table(garden, plan, { of: 'applications', system: 'metric' }), {
      columns: true,
    });
    const applications = plan.recommendations.flatMap((advice) => advice.applications);
    expect(rows).toHaveLength(applications.length);
    rows.forEach((row, index) => {
      const application = applications[index];
      expect(Number(row.mass)).toBeLessThanOrEqual((application?.mass ?? 0) + 1e-9);
      expect(Number(row.mass)).toBeGreaterThan((application?.mass ?? 0) * 0.9);
      expect(row.mass_unit).toBe('kg');
      expect(row.earliest).toBe(application?.earliest);
      expect(row.only_if_retest).toBe(application?.onlyIfRetest === true ? 'yes' : 'no');
    });
  });

  it('hold the shopping list in pounds: 1 lb is 0.45359237 kg (exact by definition)', () => {
    const rows: Record<string, string>[] = parse(table(garden, plan, { of: 'shopping', system: 'us' }), {
      columns: true,
    });
    expect(rows.map((row) => Number(row.needed))).toEqual(
      plan.shopping.map((line) => Number((line.needed / 0.45359237).toPrecision(4))),
    );
    expect(rows[0]?.money).toBe('$');
  });

  it('are CSV by RFC 4180: an independent reader (csv-parse) gives back what was written, and no cell is a formula', () => {
    const cell = fc.oneof(
      fc.string({ unit: 'grapheme' }),
      fc.constantFrom('a,b', 'say "hi"', 'two\r\nlines', '=1+1', '@x', '-x', ''),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1 }), (rows) => {
        const text = csvText(['one', 'two'], rows);
        expect(text.endsWith('\r\n')).toBe(true);
        const harmless = rows.map((row) => row.map((each) => (/^[=+\-@\t\r]/.test(each) ? `'${each}` : each)));
        expect(parse(text, { fromLine: 1, relaxQuotes: false }).slice(1)).toEqual(harmless);
      }),
    );
  });
});
