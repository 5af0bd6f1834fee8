import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LIME_RULES, type LimeRule, SULFUR_RULES, type SulfurRule, splitLime, splitSulfur } from './split.ts';

const per100 = (pounds: number) => (pounds * 0.45359237) / 9.290304;
const per1000 = (pounds: number) => per100(pounds) / 10;

describe('splitLime', () => {
  it('follows the garden rule of PSUGARD: whole to 10 lb/100 sq ft, halves to 20, thirds above', () => {
    expect(splitLime('garden, dug in', per100(8)).doses).toHaveLength(1);
    expect(splitLime('garden, dug in', per100(10)).doses).toHaveLength(1);
    expect(splitLime('garden, dug in', per100(15)).doses.map((dose) => dose / per100(1))).toEqual(
      [7.5, 7.5].map((x) => expect.closeTo(x, 6)),
    );
    expect(splitLime('garden, dug in', per100(24)).doses).toHaveLength(3);
  });

  it('follows the cap of NCSU-M: 80 lb/1000 sq ft is 50 now and 30 after six months', () => {
    const { doses, monthsApart } = splitLime('garden, capped', per1000(80));
    expect(doses.map((dose) => dose / per1000(1))).toEqual([expect.closeTo(50, 6), expect.closeTo(30, 6)]);
    expect(monthsApart).toEqual([6, 6]);
  });

  it('sums to the total for every rule', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...(Object.keys(LIME_RULES) as LimeRule[])),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (rule, total) => {
          const sum = splitLime(rule, total).doses.reduce((a, b) => a + b, 0);
          expect(Math.abs(sum - total)).toBeLessThan(1e-9);
        },
      ),
    );
  });

  it('refuses a total that is no amount', () => {
    expect(() => splitLime('lawn', -1)).toThrow(/0 or more/);
    expect(() => splitLime('lawn', Number.NaN)).toThrow(/0 or more/);
  });
});

describe('splitSulfur', () => {
  it('gives 5 lb/100 sq ft in three dressings, three months apart (ISU-Q: 2 lb at a time)', () => {
    const { doses, monthsApart } = splitSulfur('capped, general', per100(5));
    expect(doses).toHaveLength(3);
    expect(monthsApart[0]).toBe(3);
  });

  it('gives two thirds of 36 lb/1000 sq ft first (UTK)', () => {
    const { doses } = splitSulfur('two thirds first', per1000(36));
    expect(doses.map((dose) => dose / per1000(1))).toEqual([expect.closeTo(24, 6), expect.closeTo(12, 6)]);
  });

  it('sums to the total for every rule', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...(Object.keys(SULFUR_RULES) as SulfurRule[])),
        fc.double({ min: 0, max: 2, noNaN: true }),
        (rule, total) => {
          const sum = splitSulfur(rule, total).doses.reduce((a, b) => a + b, 0);
          expect(Math.abs(sum - total)).toBeLessThan(1e-9);
        },
      ),
    );
  });
});
