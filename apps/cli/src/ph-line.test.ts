import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textWidth } from './layout.ts';
import { type PhRow, phLine } from './ph-line.ts';

const rows: PhRow[] = [
  { name: 'Sour', present: { mean: 5, sd: 0.1 }, low: 6, high: 7, aim: 6.5, verdict: 'raise' },
  { name: 'Fine', present: { mean: 6.5, sd: 0.1 }, low: 6, high: 7, verdict: 'leave' },
  { name: 'Limy', present: { mean: 7.5, sd: 0.3 }, low: 4.5, high: 5.5, aim: 5, verdict: 'lower' },
  { name: 'Unknown', low: 6, high: 7, verdict: 'find out' },
];

describe('the shared pH line', () => {
  const line = (index: number, unicode = false) => phLine(rows, unicode, 80).split('\n')[index + 1] ?? '';
  it('puts today, the bracket and the arrow in the order of their pH', () => {
    expect(line(0)).toMatch(/O.*-.*\[.*>.*\]/);
    expect(line(1)).toMatch(/\[.*O.*\]/);
    expect(line(1)).not.toMatch(/[<>]/);
    expect(line(2)).toMatch(/\[.*<.*\].*-.*O/);
    expect(line(3)).not.toContain('O');
    expect(line(3)).toMatch(/\[\.+\]/);
  });
  it('draws all rows on one axis: equal pH stands in one column', () => {
    const column = (index: number) => line(index).indexOf('[');
    expect(column(0)).toBe(column(1));
    expect(column(0)).toBe(column(3));
    const head = phLine(rows, false, 80).split('\n')[0] ?? '';
    expect(head.indexOf('6')).toBe(column(0));
  });
  it('smears a doubtful reading wider', () => {
    expect((line(2).match(/~/g) ?? []).length).toBeGreaterThan((line(0).match(/~/g) ?? []).length);
  });
  it('fits the page and never fails, whatever the places', () => {
    const ph = fc.double({ min: 0, max: 14, noNaN: true });
    const any = fc.record({
      name: fc.string({ minLength: 1, maxLength: 60 }).map((name) => name.replace(/\s/g, '_')),
      mean: ph,
      sd: fc.double({ min: 0, max: 3, noNaN: true }),
      low: ph,
      high: ph,
      aim: ph,
      verdict: fc.constantFrom('raise', 'other plants', 'find out'),
    });
    fc.assert(
      fc.property(fc.array(any, { minLength: 1, maxLength: 6 }), fc.boolean(), (list, unicode) => {
        const made = list.map(({ mean, sd, low, high, ...rest }) => ({
          ...rest,
          present: { mean, sd },
          low: Math.min(low, high),
          high: Math.max(low, high),
        }));
        for (const each of phLine(made, unicode, 80).split('\n').slice(0, -1))
          expect(textWidth(each)).toBeLessThanOrEqual(80);
      }),
    );
  });
});
