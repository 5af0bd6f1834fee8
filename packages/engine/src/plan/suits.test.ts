import { findPlant } from '@sorrel/almanac/plants';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { suits } from './suits.ts';

const KINDS = ['bed', 'plot', 'container'] as const;

describe('suits', () => {
  it('names plants whose best range holds the pH, at most n, none twice', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 300, max: 950 }).map((hundredths) => hundredths / 100),
        fc.constantFrom(...KINDS),
        fc.nat(12),
        (ph, kind, n) => {
          const names = suits(ph, kind, n);
          expect(names.length).toBeLessThanOrEqual(n);
          expect(new Set(names).size).toBe(names.length);
          for (const name of names) {
            const row = findPlant(name);
            const low = kind === 'container' ? (row?.containerLow ?? row?.low) : row?.low;
            const high = kind === 'container' ? (row?.containerHigh ?? row?.high) : row?.high;
            expect(low).toBeLessThanOrEqual(ph);
            expect(high).toBeGreaterThanOrEqual(ph);
          }
        },
      ),
    );
  });

  it('offers sour-ground crops for sour ground and none of them for limy ground', () => {
    expect(suits(4.8, 'plot', 8).map((name) => findPlant(name)?.reaction)).toContain('acid-loving');
    for (const name of suits(7.6, 'plot', 8)) expect(findPlant(name)?.reaction).not.toBe('acid-loving');
  });

  it('finds nothing where nothing grows', () => {
    expect(suits(2, 'bed', 8)).toEqual([]);
  });
});
