import { describe, expect, it } from 'vitest';
import { rateKey, rateUnitFactor } from './rate-key.ts';

describe('rateKey', () => {
  // Exact definitions: lb 0.45359237 kg, ft 0.3048 m, acre 43 560 ft².
  it.each([
    ['S_lb_per_acre', 1.12085e-4, true, undefined],
    ['S_lb_per_1000_sqft', 4.88243e-3, true, undefined],
    ['lb_S_per_100sqft', 4.88243e-2, true, undefined],
    ['S_lb_per_100_sqft_low', 4.88243e-2, true, 'low'],
    ['lb_per_10_sqft', 0.488243, false, undefined],
    ['S_kg_per_ha', 1e-4, true, undefined],
    ['S_g_per_m2', 1e-3, true, undefined],
  ] as const)('reads %s', (key, factor, sulfur, end) => {
    const read = rateKey(key);
    expect(read?.factor).toBeCloseTo(factor, 6);
    expect(read).toMatchObject({ sulfur, end });
  });

  it('leaves other keys alone', () => {
    for (const key of ['pH', 'high', 'ratio', 'tol_low', 'S_g_per_kg', 'max_fl_oz_per_100_gal', 'retest_months'])
      expect(rateKey(key), key).toBeUndefined();
  });

  it('reads units as printed', () => {
    expect(rateUnitFactor('lb/acre')).toBeCloseTo(1.12085e-4, 8);
    expect(rateUnitFactor('lb/100 sq ft')).toBeCloseTo(0.0488243, 6);
    expect(rateUnitFactor('pH')).toBeUndefined();
  });
});
