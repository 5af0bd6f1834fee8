import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimalShown, isPlain, numberOf } from './number.ts';

describe('numberOf', () => {
  // Expected readings: common practice, no source.
  it.each([
    ['5.4', undefined, 5.4],
    ['5,4', undefined, 5.4],
    ['0,125', undefined, 0.125],
    ['.5', undefined, 0.5],
    ['1,250', undefined, 'ambiguous'],
    ['1.250', undefined, 'ambiguous'],
    ['1,250', 'point', 1250],
    ['1,250', 'comma', 1.25],
    ['1.250', 'comma', 1250],
    ['1.250', 'point', 1.25],
    ['1.250,5', undefined, 1250.5],
    ['1,250.5', undefined, 1250.5],
    ['12,345,678', undefined, 12345678],
    ['1 250,5', undefined, 1250.5],
    ["1'250", undefined, 1250],
    ['1250', undefined, 1250],
    ['-3,2', undefined, -3.2],
    ['1.2e3', undefined, 1200],
    ['1,25,4', undefined, undefined],
    ['1.2.3', undefined, undefined],
    ['1,250,5', undefined, undefined],
    ['14.09.2026', undefined, undefined],
    ['5.4 x', undefined, undefined],
    ['', undefined, undefined],
    [',', undefined, undefined],
    ['1234.567', undefined, 1234.567],
  ] as const)('%s with %s is %s', (text, decimal, value) => {
    expect(numberOf(text, decimal)).toBe(value);
  });

  it('reads back what Intl writes, in the notation of any country that groups by threes', () => {
    const countries = fc.constantFrom(
      ['en-US', 'point'] as const,
      ['de-DE', 'comma'] as const,
      ['de-CH', 'point'] as const,
      ['fr-FR', 'comma'] as const,
    );
    fc.assert(
      fc.property(
        countries,
        fc.integer({ min: 0, max: 99_999_999 }),
        fc.integer({ min: 0, max: 4 }),
        ([country, decimal], digits, places) => {
          const value = digits / 10 ** places;
          const text = new Intl.NumberFormat(country, { minimumFractionDigits: places }).format(value);
          expect(numberOf(text, decimal)).toBeCloseTo(value, 6);
        },
      ),
    );
  });
});

describe('isPlain', () => {
  it('passes nothing that is read in another way', () => {
    const written = fc.stringMatching(/^[0-9.,]{0,9}$/);
    fc.assert(
      fc.property(written, fc.constantFrom('point' as const, 'comma' as const, undefined), (cell, decimal) => {
        if (isPlain(cell, decimal)) expect(numberOf(cell, decimal)).toBe(Number(cell));
      }),
      { numRuns: 5000 },
    );
  });
});

describe('decimalShown', () => {
  it.each([
    ['5,4', 'comma'],
    ['5.45', 'point'],
    ['< 0,5', 'comma'],
    ['1,250', 'either'],
    ['1.250,5', 'comma'],
    ['12', undefined],
    ['14.09.2026', undefined],
  ] as const)('%s shows %s', (cell, sign) => expect(decimalShown(cell)).toBe(sign));
});
