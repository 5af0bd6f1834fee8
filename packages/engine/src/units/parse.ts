import { ok, type Result } from '../derivation/problem.ts';
import type { Dimension } from './dimension.ts';
import { type Entry, kindName, refuse } from './entry-problem.ts';
import { plainText, readNumber } from './number-text.ts';
import { type Kind, toSi } from './unit-table.ts';
import { chargePerKilogram, type Gallon, readUnit, type UnitReading } from './unit-text.ts';

export interface ParseOptions {
  /** Path of the field, for the problem; default `value`. */
  readonly field?: string;
  /** Name of the bed, plot or container. */
  readonly place?: string;
  /** Unit of a bare number. */
  readonly fallbackUnit?: string;
  /** Whose gallon, quart, pint and fluid ounce a plain one is; default `us`. With `imperial` a plain `ton` is refused as ambiguous. */
  readonly gallon?: Gallon;
}

/** Something measured, in SI, before it is known whether it is what the field needs. */
interface Amount {
  readonly value: number;
  readonly kind: Kind;
}

const longest = 100;
const leadIn = /^(?:about|approx(?:imately)?|circa|ca|roughly|~|≈)\.? */i;

/**
 * Reads a quantity as gardeners and laboratories write it and gives its SI value.
 *
 * Takes one number and a unit (`2.5 lb/100 sq ft`, `70 g/m²`, `12 meq/100 g`), sums (`4' 6"`, `5 lb 4 oz`) and
 * sides (`4 x 8 ft`, `18 in x 8 ft`, `4 x 8 ft x 6 in`). Decimal point or comma; `1,200` is refused as ambiguous.
 * Plain mg/L or ppm for an alkalinity counts as calcium carbonate, as laboratories print it; hardness degrees too.
 *
 * @param text what was written; a number needs `fallbackUnit`, except for money
 * @param dimension what the field needs; its SI unit is in `dimension.ts`
 * @returns the SI number, zero or more (a temperature may be below zero); or a problem that names the field, the
 *   value, what is wrong and an example: empty, no number, no unit, unknown, ambiguous or wrong kind of unit,
 *   negative, a range or a limit
 */
export function parseQuantity(text: string | number, dimension: Dimension, options: ParseOptions = {}): Result<number> {
  const entry: Entry = {
    written: text,
    dimension,
    field: options.field ?? 'value',
    ...(options.place === undefined ? {} : { place: options.place }),
  };
  if (typeof text === 'number' && !Number.isFinite(text)) return refuse(entry, 'not-finite');
  const plain = typeof text === 'number' ? text : plainText(text.slice(0, longest + 1)).replace(leadIn, '');
  if (plain === '') return refuse(entry, 'empty');
  if (typeof text === 'string' && text.length > longest) return refuse(entry, 'too-long');
  const amount = readAmount(entry, plain, options);
  return amount.ok ? wanted(entry, amount.value) : amount;
}

function readAmount(entry: Entry, plain: string | number, options: ParseOptions): Result<Amount> {
  if (typeof plain === 'number') return bare(entry, plain, options);
  if (entry.dimension === 'money') return readMoney(entry, plain);
  if (/^[<>≤≥]/.test(plain)) return refuse(entry, 'limit');
  const sides = plain.split(/ ?[x×*] ?(?=[\d.,])| by (?=[\d.,])/i);
  return sides.length > 1 ? readSides(entry, sides, options) : readOne(entry, plain, options);
}

/** The value in the dimension that the field needs, if what was written can be that. */
function wanted(entry: Entry, amount: Amount): Result<number> {
  const { dimension } = entry;
  const value = inDimension(dimension, amount);
  if (value === undefined)
    return refuse(entry, 'wrong-kind', { found: kindName(amount.kind), text: String(entry.written).trim() });
  if (!Number.isFinite(value)) return refuse(entry, 'not-finite');
  if (dimension === 'temperature') return value < -273.15 ? refuse(entry, 'too-cold') : ok(value);
  return value < 0 ? refuse(entry, 'negative') : ok(value);
}

function inDimension(dimension: Dimension, { value, kind }: Amount): number | undefined {
  if (kind === dimension) return value;
  if (dimension === 'waterDepth' && kind === 'length') return value;
  if (dimension === 'length' && kind === 'waterDepth') return value;
  if (dimension === 'alkalinity' && kind === 'chargePerSoilVolume') return value;
  if (dimension === 'alkalinity') {
    if (kind === 'massPerVolume') return value * chargePerKilogram('CaCO3');
    // A part per million of water weighs a milligram a litre.
    if (kind === 'massFraction') return value * 1000 * chargePerKilogram('CaCO3');
  }
  return undefined;
}

function bare(entry: Entry, value: number, options: ParseOptions): Result<Amount> {
  if (entry.dimension === 'money') return ok({ value, kind: 'money' });
  if (options.fallbackUnit === undefined) return refuse(entry, 'no-unit');
  return withUnit(entry, value, readUnit(options.fallbackUnit, options.gallon));
}

function withUnit(entry: Entry, value: number, reading: UnitReading): Result<Amount> {
  if (reading.state === 'unknown')
    return refuse(entry, 'unknown-unit', {
      unit: reading.written,
      ...(reading.nearest === undefined ? {} : { nearest: reading.nearest }),
    });
  if (reading.state === 'ambiguous')
    return refuse(entry, 'ambiguous-unit', { unit: reading.written, choices: reading.choices });
  const { unit, species } = reading;
  const si = toSi(value, unit);
  if (species === 'HCO3' && unit.kind === 'massPerVolume')
    return ok({ value: si * chargePerKilogram('HCO3'), kind: 'alkalinity' });
  if (species === 'HCO3' && unit.kind === 'massFraction')
    return ok({ value: si * 1000 * chargePerKilogram('HCO3'), kind: 'alkalinity' });
  return ok({ value: si, kind: unit.kind });
}

/** One number with its unit, or a sum such as `1 ft 6 in`. */
function readOne(entry: Entry, text: string, options: ParseOptions): Result<Amount> {
  const number = readNumber(text);
  if (number.state === 'none') return refuse(entry, 'no-number');
  if (number.state === 'ambiguous')
    return refuse(entry, 'ambiguous-number', { a: number.readings[0], b: number.readings[1] });
  const rest = number.rest.trim();
  if (/^(?:-|to|or|±|\+\/?-) ?[\d.]/i.test(rest)) return refuse(entry, 'range');
  if (rest === '') return bare(entry, number.value, options);
  const reading = readUnit(rest, options.gallon);
  if (reading.state === 'unknown') {
    const sum = readSum(number.value, rest, options.gallon);
    if (sum !== undefined) return ok(sum);
  }
  return withUnit(entry, number.value, reading);
}

/** `4' 6"`, `5 lb 4 oz`: the smaller unit must come second, measure the same kind, and stay below one of the larger. */
function readSum(first: number, rest: string, gallon: Gallon | undefined): Amount | undefined {
  const parts = /^([^\d/]+?) ?(?:and |, ?)?(\d.*)$/.exec(rest);
  const second = readNumber(parts?.[2] ?? '');
  if (parts === null || second.state !== 'number') return undefined;
  const large = readUnit(parts[1] ?? '', gallon);
  const small = readUnit(second.rest.trim(), gallon);
  if (large.state !== 'unit' || small.state !== 'unit') return undefined;
  const kind = large.unit.kind;
  if (kind !== small.unit.kind || !['length', 'mass', 'volume'].includes(kind)) return undefined;
  const remainder = second.value * small.unit.factor;
  return remainder < large.unit.factor ? { value: first * large.unit.factor + remainder, kind } : undefined;
}

const powers: Readonly<Partial<Record<Kind, number>>> = { length: 1, area: 2, volume: 3 };

/** `4 x 8 ft`: a side without a unit takes that of the next side that has one, or of the last before it. */
function readSides(entry: Entry, sides: readonly string[], options: ParseOptions): Result<Amount> {
  let unit: string | undefined;
  const withUnits = [...sides].reverse().map((side) => {
    const number = readNumber(side);
    const rest = number.state === 'number' ? number.rest.trim() : '';
    if (rest !== '') unit = rest;
    return rest === '' && unit !== undefined ? `${side} ${unit}` : side;
  });
  let value = 1;
  let power = 0;
  for (const side of withUnits) {
    const amount = readOne(entry, side, unit === undefined ? options : { ...options, fallbackUnit: unit });
    if (!amount.ok) return amount;
    if (amount.value.value < 0) return refuse(entry, 'negative');
    value *= amount.value.value;
    power += powers[amount.value.kind] ?? Number.NaN;
  }
  const kind = (Object.keys(powers) as Kind[]).find((name) => powers[name] === power);
  return kind === undefined ? refuse(entry, 'no-number') : ok({ value, kind });
}

function readMoney(entry: Entry, text: string): Result<Amount> {
  const number = readNumber(text.replace(/^(-?) ?(?:\p{Sc}|[A-Z]{2,3}\p{Sc}?) ?/u, '$1'));
  if (number.state === 'ambiguous')
    return refuse(entry, 'ambiguous-number', { a: number.readings[0], b: number.readings[1] });
  if (number.state === 'none' || !/^(?:\p{Sc}|[A-Za-z]{2,3})?$/u.test(number.rest.trim()))
    return refuse(entry, 'no-number');
  return ok({ value: number.value, kind: 'money' });
}
