import { reportUnits } from '@sorrel/almanac/report-units';
import { unitOf } from '@sorrel/engine/units';
import { describe, expect, it } from 'vitest';
import { factorOf, unitFor } from './units.ts';

const share = { quantity: 'share', element: '' } as const;
const calcium = { quantity: 'nutrient', element: 'Ca' } as const;

describe('units of reports', () => {
  it('agree with the engine’s own table of units, which was typed separately', () => {
    const own = { conductivity: 'dS/m', length: 'cm', rate: 'g/m²' } as const;
    for (const unit of reportUnits)
      if (unit.quantity === 'conductivity' || unit.quantity === 'length' || unit.quantity === 'rate') {
        const { factor } = unitOf(unit.unit === 'dt/ha' ? 'kg/ha' : unit.unit);
        const expected = (factor * (unit.unit === 'dt/ha' ? 100 : 1)) / unitOf(own[unit.quantity]).factor;
        expect(unit.multiply_by / expected, unit.unit).toBeCloseTo(1, 6);
      }
  });
  // COURSE_NOTES: 200.4 ppm of calcium to a cmolc/kg; NOFA_APP: lb/acre is twice ppm.
  it.each([
    ['cmolc/kg', 200.4],
    ['lb/acre', 0.5],
    ['mg/100g', 10],
    ['mmol(c)/kg', 20.04],
  ])('a figure of calcium in %s times %s is mg/kg', (text, factor) => {
    const unit = unitFor(text, calcium);
    expect(unit === undefined ? undefined : factorOf(unit, calcium)).toBeCloseTo(factor, 1);
  });
  it('reads the same spelling by what is measured', () => {
    expect(unitFor('mg/kg', share)?.multiply_by).toBe(0.0001);
    expect(unitFor('mg/kg', calcium)?.multiply_by).toBe(1);
    expect(unitFor('tons/acre', { quantity: 'rate', element: '' })).toBeUndefined();
  });
});
