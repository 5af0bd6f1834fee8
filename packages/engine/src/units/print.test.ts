import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Dimension, UnitSystem } from './dimension.ts';
import { parseQuantity } from './parse.ts';
import { print, printRange } from './print.ts';

const dimensions: readonly Dimension[] = [
  'length',
  'area',
  'volume',
  'mass',
  'massPerArea',
  'massPerVolume',
  'massFraction',
  'chargePerMass',
  'chargePerSoilVolume',
  'alkalinity',
  'temperature',
  'conductivity',
  'waterDepth',
  'money',
];
const systems: readonly UnitSystem[] = ['metric', 'us'];

const back = (text: string, dimension: Dimension): number => {
  const result = parseQuantity(text, dimension);
  if (!result.ok) throw new Error(`${text}: ${result.problems[0]?.message}`);
  return result.value;
};

describe('printing', () => {
  it.each([
    [0.15, 'length', '15 cm', '5.91 in'],
    [2.4384, 'length', '2.44 m', '8 ft'],
    [3, 'area', '3 m²', '32.3 sq ft'],
    [0.02, 'volume', '20 L', '5.28 gal'],
    [2, 'volume', '2 m³', '2.62 cu yd'],
    [0.24, 'mass', '240 g', '8.47 oz'],
    [0.9996, 'mass', '1 kg', '2.2 lb'],
    [0, 'mass', '0 kg', '0 lb'],
    [0.244121, 'massPerArea', '244 g/m²', '5 lb/100 sq ft'],
    [5.932764, 'massPerVolume', '5.93 kg/m³', '10 lb/cu yd'],
    [0.034, 'massFraction', '3.4%', '3.4%'],
    [8.5e-5, 'massFraction', '85 mg/kg', '85 ppm'],
    [0.12, 'chargePerMass', '12 cmolc/kg', '12 meq/100 g'],
    [3, 'alkalinity', '150 mg/L CaCO3', '150 mg/L CaCO3'],
    [10, 'temperature', '10 °C', '50 °F'],
    [0.06, 'conductivity', '0.6 dS/m', '0.6 dS/m'],
    [0.3048, 'waterDepth', '305 mm', '12 in'],
    [12.5, 'money', '12.50', '12.50'],
  ] as const)('%d as %s', (value, dimension, metric, us) => {
    expect(print(value, dimension, 'metric')).toBe(metric);
    expect(print(value, dimension, 'us')).toBe(us);
  });

  it('prints field rates and densities when asked', () => {
    expect(print(0.2241702, 'massPerArea', 'us', { form: 'field' })).toBe('1 short ton/acre');
    expect(print(0.2241702, 'massPerArea', 'metric', { form: 'field' })).toBe('2.24 t/ha');
    expect(print(1323, 'massPerVolume', 'metric', { form: 'density' })).toBe('1.32 g/cm³');
    expect(print(0.15, 'length', 'metric', { unit: 'mm' })).toBe('150 mm');
    expect(print(12.5, 'money', 'us', { currency: '$' })).toBe('$12.50');
  });

  it('prints a range in one unit, without false precision', () => {
    expect(printRange(0.1832, 0.3261, 'massPerArea', 'metric')).toBe('180 to 330 g/m²');
    expect(printRange(0.8, 1.6, 'mass', 'metric')).toBe('0.8 to 1.6 kg');
    expect(printRange(0.501, 0.502, 'mass', 'metric')).toBe('500 g');
  });

  it('is read back as what was printed, to the digits printed', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...dimensions),
        fc.constantFrom(...systems),
        fc.double({ min: 1e-5, max: 1e5, noNaN: true }),
        (dimension, system, value) => {
          const coarse = dimension === 'temperature' ? 0.06 : dimension === 'money' ? 0.006 : 0.0051 * value;
          expect(Math.abs(back(print(value, dimension, system), dimension) - value)).toBeLessThanOrEqual(coarse);
          if (dimension === 'money') return;
          const fine = back(print(value, dimension, system, { digits: 12 }), dimension);
          expect(Math.abs(fine - value)).toBeLessThanOrEqual(
            1e-9 * Math.max(value, dimension === 'temperature' ? 1 : 0),
          );
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('throws on what is no number: that is a mistake in the program', () => {
    expect(() => print(Number.NaN, 'mass', 'us')).toThrow(RangeError);
    expect(() => printRange(0, Number.POSITIVE_INFINITY, 'mass', 'us')).toThrow(RangeError);
    expect(() => print(1, 'mass', 'us', { unit: 'furlong' })).toThrow(RangeError);
  });
});
