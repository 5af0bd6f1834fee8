import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Dimension } from './dimension.ts';
import { type ParseOptions, parseQuantity } from './parse.ts';
import { unitOf } from './unit-text.ts';

const si = (text: string | number, dimension: Dimension, options?: ParseOptions): number => {
  const result = parseQuantity(text, dimension, options);
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join(' '));
  return result.value;
};
const problem = (text: string | number, dimension: Dimension, options?: ParseOptions) => {
  const result = parseQuantity(text, dimension, options);
  expect(result.ok, `${text} should be refused`).toBe(false);
  const first = result.ok ? undefined : result.problems[0];
  if (first === undefined) throw new Error('a refusal without a problem');
  return first;
};

// Expected values from the definitions of the units (EXACT) and the chemistry rows of the conversions table (GENERAL).
const cases: readonly (readonly [text: string, dimension: Dimension, expected: number])[] = [
  ['2.5 lb/100 sq ft', 'massPerArea', (2.5 * 0.45359237) / 9.290304],
  ['4 oz per sq yd', 'massPerArea', (0.25 * 0.45359237) / 0.83612736],
  ['70 g/m²', 'massPerArea', 0.07],
  ['70 g m-2', 'massPerArea', 0.07],
  ['3 t/ha', 'massPerArea', 0.3],
  ['3 Mg ha⁻¹', 'massPerArea', 0.3],
  ['2 tonnes/ha', 'massPerArea', 0.2],
  ['1 ton/acre', 'massPerArea', (2000 * 0.45359237) / 4046.8564224],
  ['1 T/A', 'massPerArea', (2000 * 0.45359237) / 4046.8564224],
  ['1 long ton per acre', 'massPerArea', (2240 * 0.45359237) / 4046.8564224],
  ['10 lb per 1000 ft2', 'massPerArea', (10 * 0.45359237) / 92.90304],
  ['10 M', 'massPerArea', (10 * 0.45359237) / 92.90304],
  ['5 LBS. per thousand square feet', 'massPerArea', (5 * 0.45359237) / 92.90304],
  ['3 t CaCO3/ha', 'massPerArea', 0.3],
  ['5 kg/m3', 'massPerVolume', 5],
  ['15 lb/yd3', 'massPerVolume', (15 * 0.45359237) / 0.764554857984],
  ['1.3 g/cm3', 'massPerVolume', 1300],
  ['1.3 Mg/m³', 'massPerVolume', 1300],
  ['62 lb/ft3', 'massPerVolume', (62 * 0.45359237) / 0.028316846592],
  ['10 oz per pint', 'massPerVolume', (10 * 0.45359237) / 16 / 0.000473176473],
  ['2 gal', 'volume', 2 * 0.003785411784],
  ['1/2 cup', 'volume', 0.5 * 0.0002365882365],
  ['2 bushels', 'volume', 2 * 0.0352390701669],
  ['4 x 8 ft x 6 in', 'volume', 16 * 0.028316846592],
  ['32 sq ft x 6 in', 'volume', 16 * 0.028316846592],
  ['18 in x 8 ft', 'area', 12 * 0.09290304],
  ['1.2 x 6 m', 'area', 7.2],
  ['4x8 ft', 'area', 32 * 0.09290304],
  ['4 ft by 8 ft', 'area', 32 * 0.09290304],
  ["4' × 8'", 'area', 32 * 0.09290304],
  ['1.2m x 60cm', 'area', 0.72],
  ['3 sq. ft.', 'area', 3 * 0.09290304],
  ['3 Square Metres', 'area', 3],
  ['5 metres squared', 'area', 5],
  ['6"', 'length', 0.1524],
  ["4'", 'length', 1.2192],
  ['4\' 6"', 'length', 1.3716],
  ['4’6½”', 'length', 54.5 * 0.0254],
  ['1 ft 6 in', 'length', 0.4572],
  ['1 1/2 in', 'length', 0.0381],
  ['½ in', 'length', 0.0127],
  ['about 12 inches', 'length', 0.3048],
  ['2,5 kg', 'mass', 2.5],
  ['5 lb 4 oz', 'mass', 5.25 * 0.45359237],
  ['1 200 g', 'mass', 1.2],
  ['2 uk cwt', 'mass', 224 * 0.45359237],
  ['12 meq/100 g', 'chargePerMass', 0.12],
  ['12 me%', 'chargePerMass', 0.12],
  ['8 cmol/kg', 'chargePerMass', 0.08],
  ['8 cmolc kg-1', 'chargePerMass', 0.08],
  ['8 cmol(+)/kg', 'chargePerMass', 0.08],
  ['1.2 meq/100 cm3', 'chargePerSoilVolume', 12],
  ['150 mg/L CaCO3', 'alkalinity', 150 / 50.043],
  ['150 MG/L as CaCO₃', 'alkalinity', 150 / 50.043],
  ['183 mg/L HCO3', 'alkalinity', 183 / 61.017],
  ['183 ppm bicarbonate', 'alkalinity', 183 / 61.017],
  ['85 ppm', 'alkalinity', 85 / 50.043],
  ['3 meq/L', 'alkalinity', 3],
  ['8 dH', 'alkalinity', (8 * 17.848) / 50.043],
  ['10 gpg', 'alkalinity', 171.181 / 50.043],
  ['85 ppm', 'massFraction', 85e-6],
  ['3.4 %', 'massFraction', 0.034],
  ['3.4 per cent', 'massFraction', 0.034],
  ['12 g/kg', 'massFraction', 0.012],
  ['12 °C', 'temperature', 12],
  ['54 F', 'temperature', 12.2222222222],
  ['-7 degF', 'temperature', -21.6666666667],
  ['0.6 dS/m', 'conductivity', 0.06],
  ['600 uS/cm', 'conductivity', 0.06],
  ['600 µS/cm', 'conductivity', 0.06],
  ['0.6 mmho/cm', 'conductivity', 0.06],
  ['300 mm', 'waterDepth', 0.3],
  ['12 in of water', 'waterDepth', 0.3048],
  ['12 L/m²', 'waterDepth', 0.012],
  ['$12.50', 'money', 12.5],
  ['12,50 €', 'money', 12.5],
];

describe('quantities as they are written', () => {
  it.each(cases)('%s as %s', (text, dimension, expected) => {
    expect(Math.abs(si(text, dimension) - expected)).toBeLessThanOrEqual(1e-9 * Math.max(1e-3, Math.abs(expected)));
  });

  it('takes a bare number only with a unit to fall back on', () => {
    expect(si(15, 'length', { fallbackUnit: 'cm' })).toBeCloseTo(0.15);
    expect(si('2 x 3', 'area', { fallbackUnit: 'm' })).toBe(6);
    expect(si(12.5, 'money')).toBe(12.5);
    expect(problem(15, 'length').code).toBe('units.no-unit');
    expect(problem('15', 'length').code).toBe('units.no-unit');
  });

  it('reads a plain gallon as the reader’s own, and refuses his ton', () => {
    expect(si('2 gal', 'volume', { gallon: 'imperial' })).toBeCloseTo(0.00909218, 12);
    expect(si('2 US gal', 'volume', { gallon: 'imperial' })).toBeCloseTo(0.007570823568, 12);
    expect(problem('2 tons', 'mass', { gallon: 'imperial' }).code).toBe('units.ambiguous-unit');
  });
});

describe('what is refused', () => {
  it('says of the wrong kind of unit what it is and what is wanted', () => {
    const { message, fix, field, value, place } = problem('2 gal', 'length', {
      field: 'beds[1].depth',
      place: 'North bed',
    });
    expect(message).toBe('2 gal is a volume; depth needs a length, for example 15 cm or 6 in.');
    expect(fix).toContain('15 cm or 6 in');
    expect({ field, value, place }).toEqual({ field: 'beds[1].depth', value: '2 gal', place: 'North bed' });
  });

  it('proposes the nearest unit it knows', () => {
    expect(problem('2 kgs/heactre', 'massPerArea').fix).toContain('kg/ha');
    expect(problem('5 fooot', 'length').fix).toContain('ft');
    expect(problem('5 cmm', 'length').fix).toMatch(/cm|mm/);
  });

  it('shows both readings of an ambiguous number', () => {
    const { code, fix } = problem('1,200 g', 'mass');
    expect(code).toBe('units.ambiguous-number');
    expect(fix).toContain('1200');
    expect(fix).toContain('1.200');
  });

  it.each([
    ['', 'length', 'units.empty'],
    ['   ', 'length', 'units.empty'],
    [Number.NaN, 'length', 'units.not-finite'],
    [Number.POSITIVE_INFINITY, 'length', 'units.not-finite'],
    ['-3 cm', 'length', 'units.negative'],
    ['-1 x 2 m', 'area', 'units.negative'],
    ['abc', 'mass', 'units.no-number'],
    ['lb', 'mass', 'units.no-number'],
    ['3-4 lb', 'mass', 'units.range'],
    ['3 to 4 lb', 'mass', 'units.range'],
    ['<5 ppm', 'massFraction', 'units.limit'],
    ['2 t/acre', 'massPerArea', 'units.ambiguous-unit'],
    ['2 cwt', 'mass', 'units.ambiguous-unit'],
    ['5 gr', 'mass', 'units.ambiguous-unit'],
    ['5 Mg', 'mass', 'units.ambiguous-unit'],
    ['8 oz', 'volume', 'units.wrong-kind'],
    ['3 meq/100 g', 'massFraction', 'units.wrong-kind'],
    ['183 mg/L HCO3', 'massPerVolume', 'units.wrong-kind'],
    ['-300 °C', 'temperature', 'units.too-cold'],
    ['2 x 3', 'area', 'units.no-unit'],
    ['4\' 14"', 'length', 'units.unknown-unit'],
    ['lots of money', 'money', 'units.no-number'],
    ['1 lb/100 sq ft/year', 'massPerArea', 'units.unknown-unit'],
    ['9'.repeat(200), 'mass', 'units.too-long'],
    [`${'9'.repeat(90)}e300 kg`, 'mass', 'units.no-number'],
  ] as const)('%s as %s', (text, dimension, code) => {
    expect(problem(text, dimension).code).toBe(code);
  });

  const dimensions = [...new Set(cases.map(([, dimension]) => dimension))];
  const pieces = fc.array(
    fc.constantFrom(
      '1',
      '2.5',
      '1/2',
      ' ',
      'x',
      'ft',
      '"',
      "'",
      'lb',
      '/',
      '100',
      'sq',
      'per',
      'CaCO3',
      '-1',
      '%',
      ',',
      '²',
    ),
    { maxLength: 12 },
  );
  it('never throws and always gives a usable number or a full problem', () => {
    const anything = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 130 }),
      pieces.map((parts) => parts.join('')),
      fc.double(),
    );
    fc.assert(
      fc.property(anything, fc.constantFrom(...dimensions), (text, dimension) => {
        const result = parseQuantity(text, dimension, { field: 'depth' });
        if (result.ok) expect(Number.isFinite(result.value)).toBe(true);
        if (result.ok && dimension !== 'temperature') expect(result.value).toBeGreaterThanOrEqual(0);
        if (!result.ok)
          for (const { message, fix, field } of result.problems) {
            expect(message.length * fix.length).toBeGreaterThan(0);
            expect(field).toBe('depth');
          }
      }),
      { numRuns: 2000 },
    );
  });
});

describe('a dose is the same whatever unit it was entered in', () => {
  const rates = [
    'g/m²',
    'kg/ha',
    't/ha',
    'lb/acre',
    'lb/100 sq ft',
    'lb/1000 sq ft',
    'oz/sq yd',
    'short ton/acre',
    'M',
  ];
  it('for rates', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 20, noNaN: true }), (rate) => {
        for (const unit of rates)
          expect(si(`${rate / unitOf(unit).factor} ${unit}`, 'massPerArea') / rate).toBeCloseTo(1, 10);
      }),
    );
  });
});
