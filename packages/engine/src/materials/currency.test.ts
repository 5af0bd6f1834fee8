import { materials } from '@sorrel/almanac/materials';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../derivation/derivation.ts';
import { currencyOf, massFor, swap } from './currency.ts';
import { defaultProduct, productFrom } from './product.ts';
import { effectivePrice, productRate } from './rate-conversion.ts';

const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const lime = (neutralisingValue: number, efficiency: number, moisture = 0) => {
  const product = productFrom('calcitic-limestone', { neutralisingValue, efficiency, moisture });
  if (!product.ok) throw new Error(product.problems[0]?.message);
  return product.value;
};
const mass = (currency: number, product: ReturnType<typeof lime>) => {
  const found = massFor(currency, product);
  if (!found.ok) throw new Error(found.problems[0]?.message);
  return found.value;
};

describe('mass and currency', () => {
  // PSULAWN: 75 lb of 80 % CCE lime becomes 94 lb; PSU_AASL: 5 lb at 70 % becomes about 7.
  it('corrects a rate as the publications do', () => {
    expect(mass(75, lime(0.8, 1))).toBeCloseTo(93.75, 10);
    expect(productRate(5, 1, 0.7)).toBeCloseTo(7.14, 2);
    expect(effectivePrice(50, 0.5)).toBe(100);
    expect(() => productRate(5, 1, 0)).toThrow(/index/);
  });

  it('is E / (NV · FE · (1 − w)), inverse in each', () => {
    fc.assert(
      fc.property(
        share(0.01, 2),
        share(0.1, 1.8),
        share(0.05, 1),
        share(0, 0.6),
        (currency, value, fineness, moisture) => {
          const found = mass(currency, lime(value, fineness, moisture));
          const expected = currency / (value * fineness * (1 - moisture));
          return (
            Math.abs(found / expected - 1) < 1e-12 &&
            Math.abs(currencyOf(found, lime(value, fineness, moisture)) / currency - 1) < 1e-12
          );
        },
      ),
    );
  });

  it('keeps the currency when one material takes the place of another', () => {
    const usable = materials
      .filter((row) => row.nvTypical !== 0 && row.efficiency !== 0)
      .map((row) => defaultProduct(row.key));
    fc.assert(
      fc.property(fc.constantFrom(...usable), fc.constantFrom(...usable), share(0.01, 50), (from, to, kg) => {
        const swapped = swap(kg, from, to);
        if (from.currency * to.currency < 0) return !swapped.ok;
        return swapped.ok && Math.abs(currencyOf(swapped.value, to) / currencyOf(kg, from) - 1) < 1e-12;
      }),
    );
  });

  it('never makes sulfur sweeten or gypsum work', () => {
    for (const [key, currency] of [
      ['sulfur-powder', 1],
      ['calcitic-limestone', -1],
      ['gypsum', 1],
      ['eggshell-crushed', 1],
    ] as const) {
      const found = massFor(currency, defaultProduct(key));
      expect(found.ok, key).toBe(false);
    }
    expect(mass(0, defaultProduct('sulfur-powder'))).toBe(0);
  });

  it('shows its working', () => {
    const recorder = createRecorder();
    const product = productFrom(
      'ag-lime',
      {
        sieves: [
          { opening: 0.25e-3, passing: 0.4 },
          { opening: 2.36e-3, passing: 0.9 },
        ],
      },
      'OH',
      recorder,
    );
    if (product.ok) massFor(0.3, product.value, recorder);
    expect(recorder.derivation().steps.map(({ symbol }) => symbol)).toEqual(['FE', 'c', 'm']);
    expect(gaps(recorder.derivation())).toEqual([]);
  });
});
