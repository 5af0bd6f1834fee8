import { conversionRow, conversions } from '@sorrel/almanac/conversions';
import { unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { convert } from './convert.ts';
import { CARBONATE_EQUIVALENT, carbonateOf, formFactor, massFractionOf, perArea } from './equivalents.ts';
import { siUnits, unitTable } from './unit-table.ts';
import { unitOf } from './unit-text.ts';

const close = (ours: number, theirs: number, relative: number, what: string) =>
  expect(Math.abs(ours / theirs - 1), `${what}: ours ${ours}, theirs ${theirs}`).toBeLessThanOrEqual(relative);

/** A unit as mathjs knows it; it reads no number below the line, so a rate per 100 stands as 0.01 of one. */
const opinion = (theirs: string) => unit(/^\d/.test(theirs) ? theirs : `1 ${theirs}`);

// mathjs 15 as a second opinion: our symbol, its expression, and how finely it knows the factor.
const mathjs: readonly (readonly [symbol: string, theirs: string, si: string, relative: number])[] = [
  ['mm', 'mm', 'm', 1e-12],
  ['cm', 'cm', 'm', 1e-12],
  ['m', 'm', 'm', 1e-12],
  ['in', 'inch', 'm', 1e-12],
  ['ft', 'foot', 'm', 1e-12],
  ['yd', 'yard', 'm', 1e-12],
  ['mm²', 'mm^2', 'm^2', 1e-12],
  ['cm²', 'cm^2', 'm^2', 1e-12],
  ['m²', 'm^2', 'm^2', 1e-12],
  ['sq in', 'sqin', 'm^2', 1e-12],
  ['sq ft', 'sqft', 'm^2', 1e-12],
  ['sq yd', 'sqyd', 'm^2', 1e-12],
  // It rounds the international acre to 4046.86 m².
  ['acre', 'acre', 'm^2', 1e-6],
  ['ha', 'hectare', 'm^2', 1e-12],
  ['mm³', 'mm^3', 'm^3', 1e-12],
  ['cm³', 'cm^3', 'm^3', 1e-12],
  ['m³', 'm^3', 'm^3', 1e-12],
  ['cu in', 'cuin', 'm^3', 1e-12],
  ['cu ft', 'cuft', 'm^3', 1e-12],
  ['cu yd', 'cuyd', 'm^3', 1e-12],
  ['L', 'L', 'm^3', 1e-12],
  ['mL', 'mL', 'm^3', 1e-12],
  ['cL', 'cL', 'm^3', 1e-12],
  ['dL', 'dL', 'm^3', 1e-12],
  ['US gal', 'gallon', 'm^3', 1e-12],
  ['US qt', 'quart', 'm^3', 1e-12],
  ['US pt', 'pint', 'm^3', 1e-12],
  ['US fl oz', 'fluidounce', 'm^3', 1e-12],
  ['cup', 'cup', 'm^3', 1e-12],
  ['kg', 'kg', 'kg', 1e-12],
  ['g', 'g', 'kg', 1e-12],
  ['mg', 'mg', 'kg', 1e-12],
  ['µg', 'ug', 'kg', 1e-12],
  ['t', 'tonne', 'kg', 1e-12],
  ['lb', 'lbm', 'kg', 1e-12],
  ['oz', 'oz', 'kg', 1e-12],
  ['grain', 'grain', 'kg', 1e-12],
  ['short ton', 'ton', 'kg', 1e-12],
  ['US cwt', 'hundredweight', 'kg', 1e-12],
  ['lb/1000 sq ft', '0.001 lbm/sqft', 'kg/m^2', 1e-12],
  ['mol', 'mol', 'mol', 1e-12],
  ['cmolc', 'cmol', 'mol', 1e-12],
  ['mmolc', 'mmol', 'mol', 1e-12],
  ['kmol', 'kmol', 'mol', 1e-12],
  ['S', 'S', 'S', 1e-12],
  ['dS', 'dS', 'S', 1e-12],
  ['mS', 'mS', 'S', 1e-12],
  ['µS', 'uS', 'S', 1e-12],
];
/** Names it knows for something else (a metric spoon). */
const meansAnother: Readonly<Record<string, string>> = { tbsp: 'tablespoon', tsp: 'teaspoon' };
/** Names it does not know at all. */
const lacking: Readonly<Record<string, string>> = {
  'US dry pt': 'drypint',
  'US bushel': 'bushel',
  'imperial gal': 'imperialgallon',
  'imperial qt': 'imperialquart',
  'imperial pt': 'imperialpint',
  'imperial fl oz': 'imperialfluidounce',
  'imperial cup': 'imperialcup',
  'metric cup': 'metriccup',
  'Australian tbsp': 'australiantablespoon',
  'long ton': 'longton',
  'UK cwt': 'longhundredweight',
  '%': 'percent',
  '‰': 'permille',
  ppm: 'ppm',
  ppb: 'ppb',
  meq: 'meq',
  µeq: 'ueq',
  'meq/100 g': 'meq',
  '°dH': 'germandegree',
  '°fH': 'frenchdegree',
  '°Clark': 'clark',
  gpg: 'gpg',
};

describe('the unit table against mathjs', () => {
  it.each(mathjs)('%s is its %s', (symbol, theirs, si, relative) => {
    close(unitOf(symbol).factor, opinion(theirs).toNumber(si), relative, symbol);
  });

  it('agrees on the two temperature scales', () => {
    for (const degrees of [-40, 0, 54, 212]) {
      const { factor, offset } = unitOf('°F');
      expect(degrees * factor + offset).toBeCloseTo(unit(degrees, 'degF').toNumber('degC'), 9);
    }
  });

  it.each([
    ['lb/acre', 'lbm/acre', 'kg/m^2', 1e-6],
    ['short ton/acre', 'ton/acre', 'kg/m^2', 1e-6],
    ['lb/100 sq ft', '0.01 lbm/sqft', 'kg/m^2', 1e-12],
    ['oz/sq yd', 'oz/sqyd', 'kg/m^2', 1e-12],
    ['t/ha', 'tonne/hectare', 'kg/m^2', 1e-12],
    ['lb/cu yd', 'lbm/cuyd', 'kg/m^3', 1e-12],
    ['lb/cu ft', 'lbm/cuft', 'kg/m^3', 1e-12],
    ['oz/pint', 'oz/pint', 'kg/m^3', 1e-12],
    ['grain/US gal', 'grain/gallon', 'kg/m^3', 1e-12],
    ['cmolc/kg', 'cmol/kg', 'mol/kg', 1e-12],
    ['dS/m', 'dS/m', 'S/m', 1e-12],
    ['µS/cm', 'uS/cm', 'S/m', 1e-12],
  ])('puts %s together as it does', (ours, theirs, si, relative) => {
    close(unitOf(ours).factor, opinion(theirs).toNumber(si), relative, ours);
  });

  it('covers every unit, or names what mathjs lacks', () => {
    const named = [
      ...mathjs.map(([symbol]) => symbol),
      ...Object.keys(meansAnother),
      ...Object.keys(lacking),
      '°C',
      '°F',
    ];
    expect(new Set(named)).toEqual(new Set(unitTable.map(({ symbol }) => symbol)));
    for (const name of Object.values(lacking)) expect(() => unit(`1 ${name}`), name).toThrow();
    for (const [symbol, name] of Object.entries(meansAnother))
      expect(Math.abs(unit(`1 ${name}`).toNumber('m^3') / unitOf(symbol).factor - 1)).toBeGreaterThan(0.01);
  });
});

describe('the unit table against the almanac', () => {
  const told = conversions.filter(({ from, to }) => convert(1, from, to).ok);
  // Chemical forms and field conventions, which are not units; each is held by the test below.
  const rest = conversions.filter((row) => !told.includes(row)).map(({ from, to }) => `${from} > ${to}`);

  it.each(told.map((row) => [`${row.from} > ${row.to}`, row] as const))('%s', (pair, row) => {
    const ours = convert(1, row.from, row.to);
    expect(ours.ok).toBe(true);
    // Exact factors are printed to ten figures, the others to four or five.
    if (ours.ok) close(ours.value, row.multiply_by, row.exact ? 1e-9 : 5e-5, pair);
  });

  it('knows by other means what is no unit', () => {
    const cations = ['Ca', 'Mg', 'K', 'Na', 'Al', 'H'] as const;
    const forms = [
      ['P', 'P2O5'],
      ['K', 'K2O'],
      ['Ca', 'CaO'],
      ['Mg', 'MgO'],
      ['CaCO3', 'CaO'],
      ['CaCO3', 'Ca'],
      ['MgCO3', 'CaCO3 eq'],
      ['CaMg(CO3)2', 'CaCO3 eq'],
      ['CaO', 'CaCO3 eq'],
      ['Ca(OH)2', 'CaCO3 eq'],
    ] as const;
    const acre = unitOf('lb/acre').factor;
    const inch = unitOf('in').factor;
    const computed: Record<string, number> = {
      ...Object.fromEntries(
        cations.map((cation) => [`cmolc/kg ${cation} > mg/kg ${cation}`, massFractionOf(cation, 0.01) * 1e6]),
      ),
      ...Object.fromEntries(forms.map(([from, to]) => [`${from} > ${to}`, formFactor(from, to) ?? Number.NaN])),
      'mg/kg > lb/acre (6 2/3 in, 2e6 lb soil)': perArea(1e-6) / acre,
      'cmolc/kg > g CaCO3/kg': carbonateOf(0.01) * 1000,
      'mmolc/kg > g CaCO3/kg': carbonateOf(0.001) * 1000,
      'meq/100 g > lb CaCO3/acre (2e6 lb soil)': perArea(carbonateOf(0.01)) / acre,
      'meq/100 cm3 > t CaCO3/ha (20 cm)': (carbonateOf(10) * 0.2) / unitOf('t/ha').factor,
      '2e6 lb/acre over 6.67 in > g/cm3': (2e6 * acre) / (6.67 * inch) / 1000,
      '2.4e6 lb/acre over 8 in > g/cm3': (2.4e6 * acre) / (8 * inch) / 1000,
    };
    expect(new Set(Object.keys(computed))).toEqual(new Set(rest));
    for (const [pair, ours] of Object.entries(computed)) {
      const [from = '', to = ''] = pair.split(' > ');
      // Table figures are printed to four or five digits.
      close(ours, conversionRow(from, to)?.multiply_by ?? Number.NaN, 5e-4, pair);
    }
    expect(CARBONATE_EQUIVALENT).toBeCloseTo(0.050043, 9);
  });
});

describe('names and codes', () => {
  it('gives every unit a UCUM code without spaces, and every stored dimension one', () => {
    for (const { symbol, ucum } of [...unitTable, ...Object.values(siUnits)]) expect(ucum, symbol).toMatch(/^[!-~]+$/);
    expect(unitOf('lb/100 sq ft').ucum).toBe('[lb_av]/(100.[sft_i])');
    expect(unitOf('short ton/acre').ucum).toBe('[ston_av]/(43560.[sft_i])');
    expect(unitOf('g/m²').ucum).toBe('g/m2');
  });

  it('lets no name stand for two units', () => {
    const seen = new Map<string, string>();
    for (const { symbol, names } of unitTable)
      for (const name of names) {
        expect(seen.get(name) ?? symbol, name).toBe(symbol);
        seen.set(name, symbol);
      }
  });
});
