import { conversion } from '@sorrel/almanac/conversions';
import { nearest } from './nearest.ts';
import { plainText, readNumber } from './number-text.ts';
import { type Kind, type NamedUnit, type Unit, unitTable } from './unit-table.ts';

/** What a concentration counts: calcium carbonate, or bicarbonate (alkalinity only). */
export type Species = 'CaCO3' | 'HCO3';

export type UnitReading =
  | { readonly state: 'unit'; readonly unit: Unit; readonly species?: Species }
  | { readonly state: 'unknown'; readonly written: string; readonly nearest?: string }
  /** The same word means different amounts in different places. */
  | { readonly state: 'ambiguous'; readonly written: string; readonly choices: string };

export type Gallon = 'us' | 'imperial';

const key = (text: string): string => text.toLowerCase().replace(/[\s.]/g, '');
const byName = new Map<string, NamedUnit>();
for (const unit of unitTable) for (const name of [key(unit.symbol), ...unit.names]) byName.set(plainText(name), unit);

const imperial: Readonly<Record<string, string>> = {
  'US gal': 'imperialgal',
  'US qt': 'imperialqt',
  'US pt': 'imperialpt',
  'US fl oz': 'imperialfloz',
};
const ambiguous: Readonly<Record<string, string>> = {
  cwt: 'UK cwt or US cwt',
  hundredweight: 'UK cwt or US cwt',
  gr: 'g or grain',
};
const molPerM3 = {
  CaCO3: 1000 / conversion('meq/L alkalinity', 'mg/L CaCO3'),
  HCO3: 1000 / conversion('meq/L alkalinity', 'mg/L HCO3'),
};

/** Gives the mole of charge in a kilogram of a species, mol/kg. Source: GENERAL. */
export const chargePerKilogram = (species: Species): number => molPerM3[species];

const rates: Readonly<Record<string, Kind>> = {
  'mass/area': 'massPerArea',
  'mass/volume': 'massPerVolume',
  'mass/mass': 'massFraction',
  'charge/mass': 'chargePerMass',
  'charge/volume': 'chargePerSoilVolume',
  'conductance/length': 'conductivity',
  'volume/area': 'length',
};

function single(text: string, gallon: Gallon): UnitReading {
  if (text === 'M') return found('lb/1000sqft');
  const name = key(text);
  const unit =
    byName.get(name) ?? byName.get(name.replace(/e?s(?=[23]?$)/, '')) ?? byName.get(name.replace(/s(?=[23]?$)/, ''));
  const choices =
    ambiguous[name.replace(/s$/, '')] ??
    (gallon === 'imperial' && /^tons?$/.test(name) ? 'long ton, short ton or tonne' : undefined) ??
    (text === 'Mg' ? 'mg or tonne' : text === 'T' ? 'short ton or tonne' : undefined);
  if (choices !== undefined) return { state: 'ambiguous', written: text, choices };
  if (unit === undefined) {
    const close = name === '' ? undefined : nearest(name, byName.keys());
    const symbol = close === undefined ? undefined : byName.get(close)?.symbol;
    return { state: 'unknown', written: text, ...(symbol === undefined ? {} : { nearest: symbol }) };
  }
  const twin = gallon === 'imperial' && !name.startsWith('us') ? imperial[unit.symbol] : undefined;
  return twin === undefined ? { state: 'unit', unit } : found(twin);
}

function found(name: string): UnitReading {
  const unit = byName.get(name);
  if (unit === undefined) throw new RangeError(`No unit is called ${name}`);
  return { state: 'unit', unit };
}

/** Denominators may carry a number: `100 sq ft`, `1000 ft2`, `100 g`. */
function below(text: string, gallon: Gallon): { readonly count: number; readonly reading: UnitReading } {
  if (text === 'M') return { count: 1000, reading: single('sqft', gallon) };
  const number = readNumber(text);
  if (number.state === 'ambiguous')
    return { count: Number(number.readings[0]), reading: single(text.replace(/^[\d,]+ ?/, ''), gallon) };
  if (number.state === 'number' && number.value > 0)
    return { count: number.value, reading: single(number.rest.trim(), gallon) };
  return { count: 1, reading: single(text, gallon) };
}

function rate(over: string, under: string, gallon: Gallon): UnitReading {
  const acre = /^(?:A|a|ac|acres?)$/.test(under);
  const clearUnder = acre ? 'acre' : under;
  if (over === 't' && acre)
    return { state: 'ambiguous', written: `${over}/${under}`, choices: 'short ton/acre or tonne/acre' };
  const hectareOrCube = /^(?:ha|hectares?|m3|cum)$/i.test(clearUnder);
  const clearOver = over === 'T' ? (acre ? 'short ton' : 't') : over === 'Mg' ? (hectareOrCube ? 't' : 'mg') : over;
  const top = single(clearOver, gallon);
  if (top.state !== 'unit') return withSuggestion(top, (near) => `${near}/${under}`);
  const { count, reading: bottom } = below(clearUnder, gallon);
  if (bottom.state !== 'unit')
    return withSuggestion(bottom, (near) => `${top.unit.symbol}/${count === 1 ? '' : `${count} `}${near}`);
  const kind = rates[`${top.unit.kind}/${bottom.unit.kind}`];
  if (kind === undefined) return { state: 'unknown', written: `${over}/${under}` };
  return {
    state: 'unit',
    unit: {
      symbol: `${top.unit.symbol}/${count === 1 ? '' : `${count} `}${bottom.unit.symbol}`,
      kind,
      factor: top.unit.factor / (count * bottom.unit.factor),
      offset: 0,
      ucum: ratioCode(top.unit.ucum, count, bottom.unit.ucum),
    },
  };
}

function ratioCode(over: string, count: number, under: string): string {
  if (count === 1) return `${over}/${under.includes('.') || under.includes('/') ? `(${under})` : under}`;
  return `${over}/(${count}.${under})`;
}

const withSuggestion = (reading: UnitReading, wrap: (near: string) => string): UnitReading =>
  reading.state === 'unknown' && reading.nearest !== undefined
    ? { ...reading, nearest: wrap(reading.nearest) }
    : reading;

/**
 * Reads a unit as people write it: `lb/100 sq ft`, `oz per sq yd`, `g m-2`, `meq/100 g`, `mg/L as CaCO3`,
 * `cmol(+) kg-1`, `short ton/acre`, `"`. Case matters only for `M` (pounds per 1000 sq ft), `Mg` and `T/A`.
 *
 * @param gallon whose gallon, quart, pint and fluid ounce a plain one is; with `imperial` a plain ton is ambiguous
 * @returns the unit, or that it is unknown (with the nearest known) or ambiguous (with the choices)
 */
export function readUnit(text: string, gallon: Gallon = 'us'): UnitReading {
  const known = readings[gallon].get(text);
  if (known !== undefined) return known;
  const reading = readAfresh(text, gallon);
  if (readings[gallon].size >= mostKnown) readings[gallon].clear();
  readings[gallon].set(text, reading);
  return reading;
}

// A workshop's table repeats a handful of units; what strangers type must not fill the store without end.
const mostKnown = 1000;
const readings: Readonly<Record<Gallon, Map<string, UnitReading>>> = { us: new Map(), imperial: new Map() };

function readAfresh(text: string, gallon: Gallon): UnitReading {
  let plain = plainText(text).replace(/_/g, ' ').replace(/\^/g, '');
  const counted = /\b(?:as )?\(?(CaCO3|calcium carbonate|HCO3-?|bicarbonate)(?=$|[\s)/])\)?/i.exec(plain);
  const species = counted === null ? undefined : /^ca/i.test(counted[1] ?? '') ? 'CaCO3' : 'HCO3';
  if (counted !== null) plain = plain.replace(counted[0], '');
  plain = plain
    .replace(/\b(?:of )?(?:water|rain|irrigation|alkalinity|hardness)$/i, '')
    .replace(/\bper ?cent\b/gi, '%')
    .replace(/\bper\b/gi, '/')
    .replace(/\bsquare\b/gi, 'sq')
    .replace(/\bcubic\b/gi, 'cu')
    .replace(/ squared\b/gi, '2')
    .replace(/ cubed\b/gi, '3')
    .replace(/\bthousand\b/gi, '1000')
    .replace(/\bhundred\b/gi, '100')
    .replace(/mol ?(?:\(\+\)|\(c\)|\+)/gi, 'molc')
    .replace(
      /[·⋅ .]*([a-z]+)-([123])(?!\d)/gi,
      (_, name: string, power: string) => `/${name}${power === '1' ? '' : power}`,
    )
    .trim();
  const [over = '', under, ...more] = plain.split('/').map((part) => part.trim());
  if (more.length > 0) return { state: 'unknown', written: text };
  const reading = under === undefined ? single(over, gallon) : wholeOrRate(plain, over, under, gallon);
  return reading.state === 'unit' && species !== undefined ? { ...reading, species } : reading;
}

/** A few names hold a slash themselves (`% w/w`, `lb/1000 sq ft`). */
function wholeOrRate(plain: string, over: string, under: string, gallon: Gallon): UnitReading {
  const whole = byName.get(key(plain));
  return whole === undefined ? rate(over, under, gallon) : { state: 'unit', unit: whole };
}

/**
 * A unit known to be in the table or to be a rate of two that are.
 *
 * @throws RangeError when it cannot be read: a mistake in the program, not in an entry
 */
export function unitOf(text: string): Unit {
  const reading = readUnit(text);
  if (reading.state !== 'unit') throw new RangeError(`No unit is called ${text}`);
  return reading.unit;
}
