import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../derivation/derivation.ts';
import { dangerAt, seriesFor, usability } from './availability.ts';
import { compareUsable, usableSentences } from './compare-usable.ts';
import { DANGERS, NUTRIENTS, nutrientOf } from './nutrient.ts';

const media = ['mineral', 'organic', 'mix', 'soilless'] as const;
const anyPh = fc.double({ min: 0, max: 14, noNaN: true });
const at = (nutrient: (typeof NUTRIENTS)[number], ph: number) => usability(nutrient, ph, 'mineral').relative;

describe('usability along the pH scale', () => {
  it('gives a share inside its band and a word for every nutrient, medium and pH', () => {
    fc.assert(
      fc.property(anyPh, fc.constantFrom(...NUTRIENTS), fc.constantFrom(...media), (ph, nutrient, medium) => {
        const found = usability(nutrient, ph, medium);
        expect(found.low).toBeLessThanOrEqual(found.relative);
        expect(found.high).toBeGreaterThanOrEqual(found.relative);
        expect(found.relative).toBeGreaterThanOrEqual(0);
        expect(found.relative).toBeLessThanOrEqual(1);
        expect(['good', 'fair', 'poor']).toContain(found.word);
        expect(found.beyond).toBe(ph < 4 || ph > 9);
      }),
    );
  });
  // barrow-hartemink-2023 and cimmyt-availability (directions read): the only published part of the revised lines.
  it.each(['Fe', 'Mn', 'Zn', 'Cu'] as const)('%s falls from 5.5 to 8', (nutrient) =>
    expect(at(nutrient, 8)).toBeLessThan(at(nutrient, 5.5)),
  );
  it.each(['Mo', 'Ca', 'Mg'] as const)('%s rises from 4.5 to 7', (nutrient) =>
    expect(at(nutrient, 7)).toBeGreaterThan(at(nutrient, 4.5)),
  );
  it('phosphorus falls as pH rises above 5.5, and potassium and sulfur hardly move', () => {
    expect(at('P', 7.5)).toBeLessThan(at('P', 5.5));
    for (const nutrient of ['K', 'S'] as const) expect(Math.abs(at(nutrient, 5.5) - at(nutrient, 8))).toBeLessThan(0.1);
  });
  // lindsay-1979 (memory): Fe falls three, Zn and Cu two log units a pH; plants notice far less (barrow-hartemink-2023).
  it('iron falls more than zinc, zinc more than copper, and none of them like the free ion', () => {
    const fall = (nutrient: 'Fe' | 'Zn' | 'Cu') => at(nutrient, 6) / at(nutrient, 8);
    expect(fall('Fe')).toBeGreaterThan(fall('Zn'));
    expect(fall('Zn')).toBeGreaterThan(fall('Cu'));
    expect(fall('Fe')).toBeLessThan(10);
  });
  // ie-liming (read): target 5.5 on peat against 6.3 to 7.0 on mineral soil.
  it('peat is best about a unit sourer than mineral soil', () => {
    expect(seriesFor('soilless')).toBe('organic');
    for (const nutrient of ['N', 'Ca', 'Mo'] as const)
      expect(usability(nutrient, 5.5, 'organic').relative).toBeGreaterThan(at(nutrient, 5.5));
  });
  it('records a step without gaps', () => {
    const recorder = createRecorder();
    usability('Fe', 7.4, 'mineral', undefined, recorder);
    expect(gaps(recorder.derivation())).toEqual([]);
  });
  it('refuses a pH off the scale', () => expect(() => usability('P', 15, 'mineral')).toThrow(RangeError));
});

describe('dangers', () => {
  // njaes-ph: aluminium soluble and toxic below 5; uky-mn: manganese in the low fives; turf-ph-words: sodium above 8.5.
  it('begin where publications say', () => {
    expect(dangerAt('aluminium-toxicity', 4.9, 'mineral').word).toBe('high');
    expect(dangerAt('aluminium-toxicity', 6, 'mineral').word).toBe('none');
    expect(dangerAt('manganese-toxicity', 5.2, 'mineral').word).not.toBe('none');
    expect(dangerAt('sodium-hazard', 8.6, 'mineral').word).not.toBe('none');
    expect(dangerAt('sodium-hazard', 8, 'mineral').word).toBe('none');
  });
  it('aluminium is no danger in peat', () => expect(dangerAt('aluminium-toxicity', 4.6, 'soilless').word).toBe('none'));
  it('of sour soil never grow as the pH rises', () => {
    fc.assert(
      fc.property(anyPh, anyPh, fc.constantFrom(...media), (a, b, medium) => {
        for (const danger of DANGERS.slice(0, 2))
          expect(dangerAt(danger, Math.max(a, b), medium).relative).toBeLessThanOrEqual(
            dangerAt(danger, Math.min(a, b), medium).relative,
          );
      }),
    );
  });
});

describe('what moving the pH would do', () => {
  it('is said only where the uncertainty leaves a difference', () => {
    expect(usableSentences('S', 5.1, 6.3, 'mineral')[0]?.code).toBe('nutrients.usable-same');
    expect(usableSentences('Fe', 7.6, 6.3, 'mineral').map(({ code }) => code)).toEqual([
      'nutrients.usable-half',
      'nutrients.move-ph-first',
    ]);
  });
  it('tells of phosphorus at 5.1 what the old chart says and that newer work does not support it', () => {
    expect(usableSentences('P', 5.1, 6.3, 'mineral').map(({ code }) => code)).toEqual([
      'nutrients.usable-same',
      'nutrients.old-chart-half',
    ]);
  });
  it('is the same backwards, and finite everywhere', () => {
    fc.assert(
      fc.property(anyPh, anyPh, fc.constantFrom(...NUTRIENTS), fc.constantFrom(...media), (a, b, nutrient, medium) => {
        const there = compareUsable(nutrient, a, b, medium);
        expect(there.times * compareUsable(nutrient, b, a, medium).times).toBeCloseTo(1, 9);
        expect(there.low).toBeGreaterThan(0);
        expect(there.high).toBeLessThan(Number.POSITIVE_INFINITY);
        expect(there.clear).toBe(compareUsable(nutrient, b, a, medium).clear);
      }),
    );
  });
});

it('knows a nutrient by symbol or name', () => {
  expect([nutrientOf('fe'), nutrientOf('Sulphur'), nutrientOf('gold')]).toEqual(['Fe', 'S', undefined]);
});
