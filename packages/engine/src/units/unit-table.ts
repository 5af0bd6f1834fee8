import { conversion } from '@sorrel/almanac/conversions';
import type { Dimension } from './dimension.ts';

/** What a unit measures; `charge` and `conductance` exist only inside a rate such as meq/100 g or dS/m. */
export type Kind = Dimension | 'charge' | 'conductance';

/** A unit: a value in it times `factor`, plus `offset`, is the SI value of its kind. */
export interface Unit {
  /** As Sorrel prints it. */
  readonly symbol: string;
  readonly kind: Kind;
  readonly factor: number;
  /** Only temperature has one. */
  readonly offset: number;
  /** Case-sensitive UCUM code, used in exported data. */
  readonly ucum: string;
}

export interface NamedUnit extends Unit {
  /** Spellings besides the symbol: lower case, without spaces, dots or a plural s. */
  readonly names: readonly string[];
}

type Row = readonly [symbol: string, factor: number, ucum: string, names: string];

const units = (kind: Kind, rows: readonly Row[]): NamedUnit[] =>
  rows.map(([symbol, factor, ucum, names]) => ({ symbol, kind, factor, offset: 0, ucum, names: names.split(' ') }));

const inchInCm = conversion('in', 'cm');
const inch = inchInCm / 100;
const foot = (12 * inchInCm) / 100;
const yard = (36 * inchInCm) / 100;
/** A power of a length without the rounding noise of binary fractions. */
const power = (length: number, exponent: number): number => Number((length ** exponent).toPrecision(15));
const pound = conversion('lb', 'kg');
const usGallon = conversion('US gal', 'L') / 1000;
const imperialGallon = conversion('imperial gal', 'L') / 1000;
// The Winchester bushel by definition; the table prints it to ten figures.
const bushel = 2150.42 * inch ** 3;
const caco3 = conversion('meq/L alkalinity', 'mg/L CaCO3');

const lengths: readonly Row[] = [
  ['mm', 0.001, 'mm', 'millimetre millimeter'],
  ['cm', 0.01, 'cm', 'centimetre centimeter'],
  ['m', 1, 'm', 'metre meter'],
  ['in', inch, '[in_i]', 'inch inche "'],
  ['ft', foot, '[ft_i]', "foot feet '"],
  ['yd', yard, '[yd_i]', 'yard'],
];
const us: Readonly<Record<string, readonly [area: string, volume: string]>> = {
  in: ['[sin_i]', '[cin_i]'],
  ft: ['[sft_i]', '[cft_i]'],
  yd: ['[syd_i]', '[cyd_i]'],
};
const all = (symbol: string, names: string): string[] => [symbol, ...names.split(' ')];

const areas: Row[] = lengths.map(([symbol, factor, ucum, names]) => [
  us[symbol] ? `sq ${symbol}` : `${symbol}²`,
  power(factor, 2),
  us[symbol]?.[0] ?? `${ucum}2`,
  all(symbol, names)
    .flatMap((name) => [`sq${name}`, `${name}2`, `${name}sq`])
    .join(' '),
]);
const volumes: Row[] = lengths.map(([symbol, factor, ucum, names]) => [
  us[symbol] ? `cu ${symbol}` : `${symbol}³`,
  power(factor, 3),
  us[symbol]?.[1] ?? `${ucum}3`,
  all(symbol, names)
    .flatMap((name) => [`cu${name}`, `${name}3`])
    .join(' '),
]);

/**
 * Every unit that stands alone; rates are put together from these by `readUnit`. A plain gallon, quart, pint
 * or fluid ounce is the US one unless the reader asks for imperial; a plain cup or spoon is always the US one.
 */
export const unitTable: readonly NamedUnit[] = [
  ...units('length', lengths),
  ...units('area', [...areas, ['acre', 43560 * foot ** 2, '43560.[sft_i]', 'ac'], ['ha', 10_000, 'har', 'hectare']]),
  ...units('volume', [
    ...volumes,
    ['L', 0.001, 'L', 'litre liter ltr dm3 cudm'],
    ['mL', 1e-6, 'mL', 'millilitre milliliter cc ccm'],
    ['cL', 1e-5, 'cL', 'centilitre centiliter'],
    ['dL', 1e-4, 'dL', 'decilitre deciliter'],
    ['US gal', usGallon, '[gal_us]', 'usgallon gal gallon usliquidgallon'],
    ['US qt', usGallon / 4, '[qt_us]', 'usquart qt quart usliquidquart liquidquart'],
    ['US pt', usGallon / 8, '[pt_us]', 'uspint pt pint usliquidpint liquidpint'],
    ['US fl oz', usGallon / 128, '[foz_us]', 'usfluidounce floz fluidounce'],
    ['cup', usGallon / 16, '[cup_us]', 'uscup levelcup'],
    ['tbsp', usGallon / 256, '[tbs_us]', 'ustbsp tablespoon ustablespoon tbs'],
    ['tsp', usGallon / 768, '[tsp_us]', 'ustsp teaspoon usteaspoon'],
    ['US dry pt', bushel / 64, '[dpt_us]', 'usdrypint drypint drypt'],
    ['US bushel', bushel, '[bu_us]', 'bushel bu usbu'],
    ['imperial gal', imperialGallon, '[gal_br]', 'imperialgallon impgal impgallon ukgal ukgallon britishgallon'],
    ['imperial qt', imperialGallon / 4, '[qt_br]', 'imperialquart impqt impquart ukqt ukquart'],
    ['imperial pt', imperialGallon / 8, '[pt_br]', 'imperialpint imppt imppint ukpt ukpint'],
    ['imperial fl oz', imperialGallon / 160, '[foz_br]', 'imperialfluidounce impfloz ukfloz ukfluidounce'],
    ['imperial cup', imperialGallon / 16, '[pt_br]/2', 'impcup ukcup'],
    ['metric cup', 250e-6, '250.mL', 'metriccup'],
    ['Australian tbsp', 20e-6, '20.mL', 'australiantablespoon autbsp'],
  ]),
  ...units('mass', [
    ['kg', 1, 'kg', 'kilogram kilogramme kilo'],
    ['g', 0.001, 'g', 'gram gramme gm'],
    ['mg', 1e-6, 'mg', 'milligram milligramme'],
    ['µg', 1e-9, 'ug', 'ug microgram mcg'],
    ['t', 1000, 't', 'tonne metricton metrictonne'],
    ['lb', pound, '[lb_av]', 'pound lbm'],
    ['oz', pound / 16, '[oz_av]', 'ounce ozav'],
    ['grain', pound / 7000, '[gr]', 'grain'],
    ['short ton', 2000 * pound, '[ston_av]', 'uston shorttn ton usshortton'],
    ['long ton', 2240 * pound, '[lton_av]', 'ukton imperialton imperiallongton'],
    ['UK cwt', 112 * pound, '[lcwt_av]', 'cwtuk ukhundredweight longcwt longhundredweight imperialcwt'],
    ['US cwt', 100 * pound, '[scwt_av]', 'cwtus ushundredweight shortcwt shorthundredweight'],
  ]),
  ...units('massPerArea', [
    // North Carolina's report prints "M": pounds per thousand square feet (NCSU_LEE).
    ['lb/1000 sq ft', pound / (1000 * foot ** 2), '[lb_av]/(1000.[sft_i])', 'lbpermsqft'],
  ]),
  ...units('massFraction', [
    ['%', 0.01, '%', 'percent pct %w/w w/w% %m/m'],
    ['‰', 0.001, '[ppth]', 'permil permille promille'],
    ['ppm', 1e-6, '[ppm]', 'partpermillion'],
    ['ppb', 1e-9, '[ppb]', 'partperbillion'],
  ]),
  ...units('charge', [
    ['mol', 1, 'mol', 'molc mole eq equivalent'],
    ['cmolc', 0.01, 'cmol', 'cmol centimole centimol'],
    ['mmolc', 0.001, 'mmol', 'mmol millimole'],
    ['meq', 0.001, 'meq', 'milliequivalent mequiv me mval'],
    ['µeq', 1e-6, 'ueq', 'ueq microequivalent'],
    ['kmol', 1000, 'kmol', 'kmolc keq'],
  ]),
  ...units('chargePerMass', [['meq/100 g', 0.01, 'meq/(100.g)', 'meq% me%']]),
  ...units('alkalinity', [
    ['°dH', conversion('deg dH', 'mg/L CaCO3') / caco3, '10.mg{CaO}/L', 'dh degdh germandegree dgh'],
    ['°fH', conversion('deg fH', 'mg/L CaCO3') / caco3, '10.mg{CaCO3}/L', 'fh degfh frenchdegree'],
    [
      '°Clark',
      conversion('deg Clark', 'mg/L CaCO3') / caco3,
      '[gr]{CaCO3}/[gal_br]',
      'clark degclark englishdegree dege',
    ],
    ['gpg', conversion('grain/US gal', 'mg/L') / caco3, '[gr]{CaCO3}/[gal_us]', 'grainpergallon'],
  ]),
  {
    symbol: '°C',
    kind: 'temperature',
    factor: 1,
    offset: 0,
    ucum: 'Cel',
    names: 'c degc celsius centigrade'.split(' '),
  },
  {
    symbol: '°F',
    kind: 'temperature',
    factor: 5 / 9,
    offset: -160 / 9,
    ucum: '[degF]',
    names: 'f degf fahrenheit'.split(' '),
  },
  ...units('conductance', [
    ['S', 1, 'S', 'siemens'],
    ['dS', 0.1, 'dS', 'decisiemens'],
    ['mS', 0.001, 'mS', 'millisiemens mmho millimho'],
    ['µS', 1e-6, 'uS', 'us microsiemens umho micromho'],
  ]),
];

/** The unit each stored value is in, with its UCUM code; money is in the person's own currency and has none. */
export const siUnits: Readonly<
  Record<Exclude<Dimension, 'money'>, { readonly symbol: string; readonly ucum: string }>
> = {
  length: { symbol: 'm', ucum: 'm' },
  area: { symbol: 'm²', ucum: 'm2' },
  volume: { symbol: 'm³', ucum: 'm3' },
  mass: { symbol: 'kg', ucum: 'kg' },
  massPerArea: { symbol: 'kg/m²', ucum: 'kg/m2' },
  massPerVolume: { symbol: 'kg/m³', ucum: 'kg/m3' },
  massFraction: { symbol: 'kg/kg', ucum: 'kg/kg' },
  chargePerMass: { symbol: 'mol/kg', ucum: 'mol/kg' },
  chargePerSoilVolume: { symbol: 'mol/m³', ucum: 'mol/m3' },
  alkalinity: { symbol: 'meq/L', ucum: 'meq/L' },
  temperature: { symbol: '°C', ucum: 'Cel' },
  conductivity: { symbol: 'S/m', ucum: 'S/m' },
  waterDepth: { symbol: 'm', ucum: 'm' },
};

/** The SI value of a number in a known unit. */
export const toSi = (value: number, unit: Unit): number => value * unit.factor + unit.offset;
/** The number in a known unit of an SI value. */
export const fromSi = (value: number, unit: Unit): number => (value - unit.offset) / unit.factor;
