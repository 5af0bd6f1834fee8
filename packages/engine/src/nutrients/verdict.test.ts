import { nutrientLevels } from '@sorrel/almanac/nutrient-levels';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Extractant, NutrientLevel } from '../evidence/soil-test.ts';
import type { Medium } from '../soil/soil.ts';
import { classOf, standardsFor } from './level-class.ts';
import { nutrientVerdict, nutrientVerdicts, type Verdict } from './verdict.ts';

const ppm = (nutrient: string, extractant: Extractant, value: number): NutrientLevel => ({
  nutrient,
  extractant,
  value: value * 1e-6,
});
const of = (level: NutrientLevel, ph: number, medium: Medium = 'mineral') => nutrientVerdict(level, { ph, medium });
const codes = (verdict: ReturnType<typeof of>) => [...verdict.reasons, ...verdict.actions].map(({ code }) => code);

describe('classes of levels', () => {
  // njaes-levels (read), lb/acre; the bounds are whole numbers with gaps between them.
  it.each([
    ['P', 24, 'very low'],
    ['P', 25, 'low'],
    ['P', 137, 'high (optimum)'],
    ['P', 138, 'very high (excess)'],
    ['K', 41, 'low'],
    ['Ca', 1790, 'high (optimum)'],
  ])('Mehlich-3 %s %d lb/acre is %s', (nutrient, value, name) =>
    expect(classOf(nutrient, 'mehlich-3', value)?.class).toBe(name),
  );
  // dtpa-table (read) and lindsay-norvell-1978 (memory) disagree about 0.9 mg/kg of zinc.
  it('names the standard and others that say something else', () => {
    const zinc = classOf('Zn', 'dtpa', 0.9);
    expect([zinc?.class, zinc?.standard]).toEqual(['marginal', 'dtpa-table']);
    expect(zinc?.others).toEqual([{ standard: 'lindsay-norvell-1978', class: 'adequate', meaning: 'enough' }]);
    expect(classOf('Zn', 'dtpa', 0.9, 'lindsay-norvell-1978')?.class).toBe('adequate');
  });
  it('rise with the level, for every nutrient, extractant and standard', () => {
    const rank = { short: 0, marginal: 1, enough: 2, excess: 3 } as const;
    const tables = [...new Map(nutrientLevels.map((row) => [`${row.nutrient} ${row.extractant}`, row])).values()];
    const level = fc.double({ min: 0, max: 3000, noNaN: true });
    fc.assert(
      fc.property(level, level, fc.constantFrom(...tables), (a, b, { nutrient, extractant }) => {
        for (const standard of standardsFor(nutrient, extractant)) {
          const [low, high] = [Math.min(a, b), Math.max(a, b)].map((each) =>
            classOf(nutrient, extractant, each, standard),
          );
          expect(rank[low?.meaning ?? 'short']).toBeLessThanOrEqual(rank[high?.meaning ?? 'excess']);
        }
      }),
      { numRuns: 300 },
    );
  });
  it('say nothing without a table', () => expect(classOf('Mo', 'dtpa', 1)).toBeUndefined());
});

describe('lock-up or lack', () => {
  it('enough phosphorus in limy soil is locked, and no more is advised', () => {
    const found = of(ppm('P', 'mehlich-3', 60), 7.8);
    expect(found.verdict).toBe('enough but locked');
    expect(codes(found)).toContain('nutrients.locked-no-feed');
    expect(codes(found)).not.toContain('nutrients.add-some');
    expect(found.basis).toBe('memory');
  });
  // iron-mn-dnr (read): locked up above 7, most available at 6 or less.
  it('iron by DTPA is usable at 6 and locked at 7.5', () => {
    expect(of(ppm('Fe', 'dtpa', 8), 6).verdict).toBe('enough and usable');
    expect(of(ppm('Fe', 'dtpa', 8), 7.5).verdict).toBe('enough but locked');
  });
  // njaes-levels (read): one index for pH and level together, short below 25, a caution above 100.
  it('reads manganese by its index: short, locked or too much', () => {
    expect(of(ppm('Mn', 'mehlich-3', 1), 6).verdict).toBe('truly short');
    expect(of(ppm('Mn', 'mehlich-3', 8), 7.8).verdict).toBe('enough but locked');
    expect(of(ppm('Mn', 'mehlich-3', 30), 5.1).verdict).toBe('too much');
    expect(codes(of(ppm('Mn', 'mehlich-3', 30), 5.1))).toContain('nutrients.manganese-sour');
  });
  it('a short magnesium asks for dolomite in sour soil and for magnesium sulfate elsewhere', () => {
    expect(codes(of(ppm('Mg', 'mehlich-3', 20), 5.4))).toContain('nutrients.magnesium-sour');
    expect(codes(of(ppm('Mg', 'mehlich-3', 20), 6.8))).toContain('nutrients.magnesium-plain');
  });
  it('never lends the classes of another extractant or another medium', () => {
    expect(of(ppm('P', 'dtpa', 10), 6).verdict).toBe('cannot tell');
    expect(of(ppm('K', 'mehlich-3', 100), 6, 'soilless').verdict).toBe('cannot tell');
    expect(of({ nutrient: 'K', extractant: 'sme', value: 0.16 }, 6).verdict).toBe('cannot tell');
    expect(of(ppm('P', 'bray-p1', 30), 7.6).verdict).toBe('cannot tell');
  });
  // mo-greenhouse (read): 150 to 249 ppm of K in the saturated extract is the optimum.
  it('reads a mix by its own classes', () =>
    expect(of({ nutrient: 'K', extractant: 'sme', value: 0.16 }, 6, 'soilless').class?.class).toBe('optimum'));
  // umd-2006 (read): iron-inefficient pot crops above 6.2.
  it('locks iron in a pot at 6.8 unless its crops are known to manage', () => {
    const iron: NutrientLevel = { nutrient: 'Fe', extractant: 'sme', value: 0.001 };
    expect(nutrientVerdict(iron, { ph: 6.8, medium: 'soilless' }).verdict).toBe('enough but locked');
    expect(nutrientVerdict(iron, { ph: 6.0, medium: 'soilless' }).verdict).toBe('enough and usable');
  });
  it('doubts the printed upper limit of boron', () =>
    expect(codes(of(ppm('B', 'mehlich-3', 5), 6))).toContain('nutrients.boron-limit-doubtful'));
  it('says that much potassium pushes magnesium aside', () => {
    const found = nutrientVerdicts([ppm('K', 'mehlich-3', 200), ppm('Mg', 'mehlich-3', 100)], {
      ph: 6.3,
      medium: 'mineral',
    });
    expect(found[1]?.reasons.map(({ code }) => code)).toContain('nutrients.potassium-pushes');
  });
  it('gives every level at every pH a reason, an action, a source, and never fertilizer for what is locked', () => {
    const feeding = new Set([
      'nutrients.add-some',
      'nutrients.magnesium-sour',
      'nutrients.magnesium-plain',
      'nutrients.boron-short',
    ]);
    const kinds: readonly Verdict[] = [
      'enough and usable',
      'enough but locked',
      'truly short',
      'too much',
      'cannot tell',
    ];
    fc.assert(
      fc.property(
        fc.constantFrom('N', 'P', 'K', 'S', 'Ca', 'Mg', 'Fe', 'Mn', 'B', 'Cu', 'Zn', 'Mo', 'NO3-N'),
        fc.constantFrom<Extractant>('mehlich-3', 'dtpa', 'bray-p1', 'olsen', 'ammonium-acetate', 'hot-water', 'sme'),
        fc.double({ min: 0, max: 0.01, noNaN: true }),
        fc.double({ min: 2, max: 11, noNaN: true }),
        fc.constantFrom<Medium>('mineral', 'organic', 'mix', 'soilless'),
        (nutrient, extractant, value, ph, medium) => {
          const found = nutrientVerdict({ nutrient, extractant, value }, { ph, medium });
          expect(kinds).toContain(found.verdict);
          expect(found.reasons.length).toBeGreaterThan(0);
          expect(found.actions.length).toBeGreaterThan(0);
          expect(found.sources.length).toBeGreaterThan(0);
          if (found.verdict === 'truly short') return;
          for (const { code } of found.actions) expect(feeding.has(code)).toBe(false);
          if (found.verdict === 'enough but locked') expect(found.actions[0]?.code).toBe('nutrients.locked-no-feed');
        },
      ),
    );
  });
});
