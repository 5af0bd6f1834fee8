import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCases } from './cases.ts';
import { boundWords, compare } from './compare.ts';
import { shippedFiles } from './shipped.ts';
import { readTolerance } from './tolerance.ts';

const read = (tolerance: string, keys: readonly string[] = ['x'], inputs = {}) => {
  const rule = readTolerance({ tolerance, inputs, expected: Object.fromEntries(keys.map((key) => [key, 1])) });
  return { ...rule, words: keys.map((key) => boundWords(rule.boundFor(key))) };
};

describe('the tolerance language of the case files', () => {
  it.each([
    ['0.05', '±0.05'],
    ['0.05 abs', '±0.05'],
    ['+-0.25', '±0.25'],
    ['1%', '±1 %'],
    ['+-3%', '±3 %'],
    ['+-0.2%', '±0.2 %'],
    ['2% grid', '±2 %'],
    ['exact', 'exact'],
    ['exact (linear rule)', 'exact'],
    ['exact (cap 2 lb)', 'exact'],
    ['rule exact', 'exact'],
    ['0', 'exact'],
    ['0 days', 'exact'],
    ['+-2.5 yr and order kept', '±2.5'],
    ['within factor 2', 'within a factor of 2'],
    ['initial rate within factor 2', 'within a factor of 2'],
    ['order of magnitude', 'within a factor of 3.16'],
    ['each rate inside 200-850', 'inside 200 to 850'],
    ['accept 5.3-8.7 by hydrate', 'inside 5.3 to 8.7'],
    ['clamp near 2-3, never below 2', 'inside 2 to 3'],
    ['model inside 30-95', 'inside 30 to 95'],
    ['text', 'text'],
    ['direction', 'same direction'],
    ['qualitative: rebound of 0.2-0.4', 'same direction'],
    ['sign and rebound only', 'same direction'],
    ['ordering', 'same direction'],
  ])('reads %j as %s', (tolerance, words) => {
    const { words: got, remarks } = read(tolerance);
    expect(got).toEqual([words]);
    expect(remarks).toEqual([]);
  });

  it('gives each key its own bound: by unit, by name, by order', () => {
    expect(read('3 lb; 0.3 pct', ['ECCE_pct', 'ECCE_lb_per_ton']).words).toEqual(['±0.3', '±3']);
    expect(read('0.01 on cmolc; 1 on others', ['mg_kg', 'lb_per_acre', 'cmolc_kg']).words).toEqual([
      '±1',
      '±1',
      '±0.01',
    ]);
    expect(read('1 pct (MgO 2); 1%', ['CCE_pct', 'lb_equal']).words).toEqual(['±1', '±1 %']);
    expect(read('1 pct (MgO 2); 1%', ['CCE_pct', 'lb_equal'], { formula: 'MgO' }).words).toEqual(['±2', '±1 %']);
    expect(read('slope +-0.03; per t +-0.15', ['dpH_per_year', 'dpH_per_t_lime']).words).toEqual(['±0.03', '±0.15']);
  });

  it('holds a key that no part speaks for to the exact figure, and says so', () => {
    const { words, remarks } = read('pH +-0.3 using beta 41', ['pH', 'slope']);
    expect(words).toEqual(['±0.3', 'exact']);
    expect(remarks).toEqual(['no bound is given for slope: taken as exact']);
  });

  it('keeps the bound of a look-up apart from the bound of the model', () => {
    for (const text of ['model +-35%; table lookup exact', 'lookup exact; model +-35%', 'rule exact; model +-35%']) {
      const { words, model } = read(text);
      expect(words).toEqual(['exact']);
      expect(model && boundWords(model)).toBe('±35 %');
    }
    const two = read('rule +-1%; model -40/+100%');
    expect(two.words).toEqual(['±1 %']);
    expect(two.model && boundWords(two.model)).toBe('−40/+100 %');
    expect(read('lookup exact; model not expected to match').model).toEqual({ kind: 'shown' });
    expect(read('rule exact; model may be up to 2.2x').model).toEqual({ kind: 'factor', low: 1, high: 2.2 });
  });

  it.each(['sizes under 1 mm', 'about 3 or so, perhaps', '0.01, 0.02', 'half of 5% of it', '', 'soon'])(
    'takes %j, which it cannot read, as exact and says so',
    (tolerance) => {
      const { words, remarks } = read(tolerance);
      expect(words).toEqual(['exact']);
      expect(remarks.at(-1)).toBe('taken as exact');
    },
  );

  it('never lets an unknown text excuse a difference', () => {
    const known = /exact|identical|equal|lookup|sign|direction|ordering|ratio|qualitative|text|magnitude|expected/;
    fc.assert(
      fc.property(fc.string(), fc.double({ min: 1, max: 1e6, noNaN: true }), (tolerance, published) => {
        fc.pre(!known.test(tolerance) && !/\d/.test(tolerance));
        const check = {
          id: '',
          title: '',
          inputs: {},
          expected: { x: published },
          tolerance,
          source: '',
          basis: '',
          note: '',
        };
        expect(compare(check, { x: published * 1.001 }).within).toBe(false);
        expect(compare(check, { x: published }).within).toBe(true);
      }),
    );
  });

  it('reads the whole of every shipped tolerance but these', () => {
    const unread = shippedFiles
      .flatMap((file) => readCases(readFileSync(file, 'utf8')).cases)
      .filter((check) => readTolerance(check).remarks.length > 0)
      .map(({ id, tolerance }) => `${id} ${tolerance}`);
    expect(unread).toEqual([
      'A053 pH +-0.3 using beta 41',
      'A055 sign and rebound only; local wetted band',
      'A066 order of magnitude; tool must warn below 5',
      'DY21 sizes under 1 mm',
      'DY25 slope +-0.03; per t +-0.15',
    ]);
  });
});
