import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scoops, volumeOf, weighAndScoop, weighable, weighingStep, weight } from './measure.ts';
import { parseQuantity } from './parse.ts';
import { say } from './say.ts';
import { unitOf } from './unit-text.ts';

const pound = unitOf('lb').factor;
const mass = fc.double({ min: 0, max: 500, noNaN: true });
const system = fc.constantFrom('metric' as const, 'us' as const);

// Steps: what kitchen and luggage scales show; common practice, no source.
describe('weighing out', () => {
  it.each([
    [0.0123, '12 g', '0.45 oz'],
    [0.2384, '240 g', '8 1/2 oz'],
    [1.2345, '1.23 kg', '2 lb 12 oz'],
    [3.33, '3.35 kg', '7 1/4 lb'],
    [22.68, '22.5 kg', '50 lb'],
    [pound, '450 g', '1 lb'],
  ])('%d kg', (kg, metric, us) => {
    expect(weight(kg, 'metric')).toBe(metric);
    expect(weight(kg, 'us')).toBe(us);
  });

  it('never goes up by more than half a step, and not at all when rounding down', () => {
    fc.assert(
      fc.property(mass, system, (kg, units) => {
        const step = weighingStep(kg, units);
        expect(Math.abs(weighable(kg, units) - kg)).toBeLessThanOrEqual(step / 2 + 1e-9);
        const down = weighable(kg, units, 'down');
        expect(down).toBeLessThanOrEqual(kg * (1 + 1e-9) + step * 1e-8);
        expect(kg - down).toBeLessThan(step * (1 + 1e-9));
        expect(weighable(down, units, 'down')).toBeCloseTo(down, 9);
      }),
      { numRuns: 2000 },
    );
  });

  it('keeps a cap of a whole pound or kilogram as it is', () => {
    for (const pounds of [1, 2, 5, 50]) expect(weight(pounds * pound, 'us', 'down')).toBe(`${pounds} lb`);
    for (const kg of [1, 2, 5, 50]) expect(weight(kg, 'metric', 'down')).toBe(`${kg} kg`);
  });

  it('says exactly what it rounded to', () => {
    fc.assert(
      fc.property(mass, system, (kg, units) => {
        const read = parseQuantity(weight(kg, units), 'mass');
        expect(read.ok && Math.abs(read.value - weighable(kg, units))).toBeLessThanOrEqual(1e-6 + 1e-9 * kg);
      }),
      { numRuns: 2000 },
    );
  });

  it('throws on a mass that cannot be', () => {
    for (const kg of [-1, Number.NaN, Number.POSITIVE_INFINITY]) expect(() => weighable(kg, 'us')).toThrow(RangeError);
  });
});

describe('scoops', () => {
  it('measures a pound of flowers of sulfur as 3 1/4 cups (LSU_T2T: 10 oz a pint, 3.2 cups)', () => {
    expect(scoops(volumeOf(pound, (10 * unitOf('oz').factor) / unitOf('pint').factor), 'us')).toBe('3 1/4 cups');
  });

  it.each([
    [5e-6, '1 teaspoon', '5 mL'],
    [15e-6, '1 tablespoon', '15 mL'],
    [30e-6, '2 tablespoons', '30 mL'],
    [120e-6, '1/2 cup', '120 mL'],
    [0.00152, '6 1/2 cups', '1.5 L'],
    [0.0095, '2 1/2 gallons', '9.5 L'],
  ])('%d m³', (volume, us, metric) => {
    expect(scoops(volume, 'us')).toBe(us);
    expect(scoops(volume, 'metric')).toBe(metric);
  });

  it('stays within a fifth of what it measures, from a teaspoon up', () => {
    fc.assert(
      fc.property(fc.double({ min: 5e-6, max: 1, noNaN: true }), system, (volume, units) => {
        const read = parseQuantity(scoops(volume, units), 'volume');
        expect(read.ok && Math.abs(read.value / volume - 1)).toBeLessThan(0.21);
        const down = parseQuantity(scoops(volume, units, 'down'), 'volume');
        expect(down.ok && down.value / volume).toBeLessThan(1 + 1e-8);
      }),
      { numRuns: 1000 },
    );
  });

  it('puts the weight first, and without a density asks for one weighed cup', () => {
    const known = say(weighAndScoop(pound, 599, 'us'), 'us');
    expect(known).toMatch(/^Weigh out 1 lb\. .*3 1\/4 cups/);
    const unknown = say(weighAndScoop(pound, undefined, 'us'), 'us');
    expect(unknown).toMatch(/^Weigh out 1 lb\..*weigh one level cup/);
    expect(() => volumeOf(1, 0)).toThrow(RangeError);
  });
});
