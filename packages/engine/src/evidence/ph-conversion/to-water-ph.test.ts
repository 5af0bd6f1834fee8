import { phConversion, phConversions } from '@sorrel/almanac/ph-conversions';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../../derivation/derivation.ts';
import { applyEquation, invertEquation } from './equation.ts';
import { toWaterPh } from './to-water-ph.ts';

describe('published equations', () => {
  it('give the printed figures', () => {
    // Conyers and Davey 1988: 6.0 in water is 5.4 in CaCl2.
    expect(applyEquation(phConversion('cacl2-2.5-from-water'), 6)).toBeCloseTo(5.4, 9);
    // Kabala 2016: KCl 5.0 is 6.144 in water 1:5.
    expect(applyEquation(phConversion('water-5-from-kcl-2.5'), 5)).toBeCloseTo(6.144, 3);
    // Libohova 2014: 6.5 at 1:1 is 6.38 at 1:5.
    expect(applyEquation(phConversion('water-5-from-water-1'), 6.5)).toBeCloseTo(6.38, 9);
    // Finke 1996 via HB-PTF: KCl 6.0 in clay is 6.838 in water.
    expect(applyEquation(phConversion('water-from-kcl-clay'), 6)).toBeCloseTo(6.838, 3);
  });

  it('can all be solved backwards', () => {
    const facts = { conductivity: 0.01, organicMatter: 0.04 };
    for (const row of phConversions)
      fc.assert(
        fc.property(fc.double({ min: 3, max: 9, noNaN: true }), (ph) => {
          expect(invertEquation(row, applyEquation(row, ph, facts), facts)).toBeCloseTo(ph, 7);
        }),
      );
  });
});

describe('toWaterPh', () => {
  const to = (method: Parameters<typeof toWaterPh>[0]['method'], value: number, facts = {}) =>
    toWaterPh({ method, value }, facts);

  it('leaves water 1:1 alone and puts the others on its scale', () => {
    expect(to('water-1:1', 6.2)).toEqual({ mean: 6.2, sd: 0 });
    expect(to('cacl2-0.01M', 5.4)?.mean).toBeCloseTo(6, 9);
    expect(to('water-1:5', 6.08)?.mean).toBeCloseTo(6, 9);
    expect(to('water-paste', 5.9)?.mean).toBeCloseTo(6, 9);
    expect(to('unstated', 6)?.sd).toBe(0.3);
  });

  it('widens in somewhat salty soil and refuses in salty soil', () => {
    expect(to('cacl2-0.01M', 5.4, { conductivity: 0.01 })?.sd).toBe(0.2);
    expect(to('cacl2-0.01M', 5.4, { conductivity: 0.03 })?.sd).toBe(0.3);
    expect(to('cacl2-0.01M', 5.4, { conductivity: 0.05 })).toBeUndefined();
  });

  it('reads KCl by soil', () => {
    // HB-PTF: sand 0.9843 + 0.9003 pH + 0.00995 OM, clay 2.189 + 0.7748 pH, peat 1.3235 + 0.8581 pH.
    expect(to('kcl-1M', 5, { clay: 0.05, organicMatter: 0.03 })?.mean).toBeCloseTo(0.9843 + 4.5015 + 0.02985, 4);
    expect(to('kcl-1M', 5, { clay: 0.3 })?.mean).toBeCloseTo(2.189 + 3.874, 4);
    expect(to('kcl-1M', 5, { clay: 0.3, organicMatter: 0.4 })?.mean).toBeCloseTo(1.3235 + 4.2905, 4);
    // Unknown texture: KAB16 to 1:5 and on to 1:2.5.
    expect(to('kcl-1M', 5)?.mean).toBeCloseTo((6.144 - 0.14) / 0.99, 3);
  });

  it('leaves potting media on their own scale', () => {
    for (const method of ['media-1:2', 'media-extract', 'pour-through'] as const) expect(to(method, 6)).toBeUndefined();
  });

  it('rises with the reading, whatever the method', () => {
    const methods = [
      'water-1:1',
      'water-1:2',
      'water-1:2.5',
      'water-1:5',
      'water-paste',
      'cacl2-0.01M',
      'kcl-1M',
      'unstated',
    ] as const;
    for (const method of methods)
      fc.assert(
        fc.property(
          fc.double({ min: 3, max: 8.4, noNaN: true }),
          fc.double({ min: 0.01, max: 1, noNaN: true }),
          (ph, step) => {
            expect(to(method, ph + step)?.mean).toBeGreaterThan(to(method, ph)?.mean ?? 99);
          },
        ),
      );
  });

  it('tells how it came about', () => {
    for (const method of ['water-1:2', 'water-1:5', 'water-paste', 'cacl2-0.01M', 'kcl-1M', 'unstated'] as const) {
      const recorder = createRecorder();
      toWaterPh({ method, value: 5.5 }, { clay: 0.1 }, recorder);
      expect(gaps(recorder.derivation())).toEqual([]);
    }
  });
});
