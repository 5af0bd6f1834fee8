import { describe, expect, it } from 'vitest';
import { described, publishedSoilMass } from './described.ts';
import * as units from './published-units.ts';

describe('the units lime tables are printed in', () => {
  it('agree with the factors of the lime requirement note', () => {
    // lime-requirement/conversions.csv, derived
    expect(units.SHORT_TON_PER_ACRE * 1000).toBeCloseTo(224.1702, 3);
    expect(units.LB_PER_100_SQ_FT * 1000).toBeCloseTo(48.8243, 3);
    expect(units.LB_PER_1000_SQ_FT * 1000).toBeCloseTo(4.88243, 4);
    expect(units.LB_PER_ACRE * 1e4).toBeCloseTo(1.12085, 4);
    expect(units.CACO3_PER_MOL * 10).toBeCloseTo(0.50045, 5);
    expect(units.FURROW_SLICE_DENSITY).toBeCloseTo(1323, -0.5);
  });

  it('find both furrow-slice conventions to be one soil', () => {
    expect((2.4e6 * units.LB_PER_ACRE) / (8 * units.INCH) / units.FURROW_SLICE_DENSITY).toBeCloseTo(1, 9);
  });

  it('carry the mass of soil each American method is printed for', () => {
    expect(publishedSoilMass('smp-table')).toBeCloseTo(2.4e6 * units.LB_PER_ACRE, 2);
    expect(publishedSoilMass('psu-mehlich')).toBeCloseTo(2e6 * units.LB_PER_ACRE, 2);
    expect(publishedSoilMass('osu-sikora')).toBeCloseTo(6 * units.INCH * units.FURROW_SLICE_DENSITY, 2);
    expect(() => publishedSoilMass('nc-mehlich')).toThrow(RangeError);
    expect(() => described('nobody')).toThrow(RangeError);
  });
});
