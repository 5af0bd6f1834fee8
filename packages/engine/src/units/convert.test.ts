import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convert } from './convert.ts';
import type { Kind } from './unit-table.ts';
import { unitTable } from './unit-table.ts';

const told = (value: number, from: string, to: string): number => {
  const result = convert(value, from, to);
  if (!result.ok) throw new Error(result.problems[0]?.message);
  return result.value;
};

describe('conversion', () => {
  it.each([
    // RHSACID: 135 g/m² is printed as 4 oz per square yard; ARK_GH: 10 lb/cu yd as 5.93 kg/m³.
    [135, 'g/m2', 'oz/sq yd', 3.98],
    [10, 'lb/yd3', 'kg/m3', 5.93],
    // NOFA_APP: 21.7 bushels to the cubic yard.
    [1, 'yd3', 'US bushel', 21.7],
    // ALK_SLIDES: 3 meq/L is 150 mg/L as carbonate and 183 as bicarbonate.
    [3, 'meq/L', 'mg/L CaCO3', 150.1],
    [3, 'meq/L', 'mg/L HCO3', 183.1],
    [183, 'mg/L HCO3', 'mg/L CaCO3', 150.1],
    [20, '°C', '°F', 68],
  ])('%d %s is %s %d', (value, from, to, expected) => {
    expect(Math.abs(told(value, from, to) / expected - 1)).toBeLessThan(0.002);
  });

  it('goes there and back for every two units of a kind', () => {
    const kinds = new Map<Kind, string[]>();
    for (const { kind, symbol } of unitTable)
      if (kind !== 'charge' && kind !== 'conductance') kinds.set(kind, [...(kinds.get(kind) ?? []), symbol]);
    const pairs = [...kinds.values()].flatMap((symbols) => symbols.flatMap((a) => symbols.map((b) => [a, b] as const)));
    fc.assert(
      fc.property(fc.constantFrom(...pairs), fc.double({ min: 0.01, max: 1e4, noNaN: true }), ([a, b], value) => {
        expect(told(told(value, a, b), b, a) / value).toBeCloseTo(1, 9);
      }),
      { numRuns: 1000 },
    );
  });

  it('refuses units of two kinds, and units it does not know, in words', () => {
    const mixed = convert(1, 'gal', 'lb');
    expect(mixed.ok ? '' : mixed.problems[0]?.message).toContain('1 gal is a volume');
    expect(convert(1, 'furlong', 'm').ok).toBe(false);
    expect(convert(1, 'm', 'furlong').ok).toBe(false);
    expect(convert(1, 'mol', 'mol').ok).toBe(false);
  });
});
