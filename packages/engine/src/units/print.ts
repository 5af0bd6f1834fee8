import type { Dimension, UnitSystem } from './dimension.ts';
import { forms, ladders, zeros } from './print-ladders.ts';
import { plainNumber, significant } from './round.ts';
import { fromSi, type Unit } from './unit-table.ts';
import { unitOf } from './unit-text.ts';

export interface PrintOptions {
  /** Significant digits; default 3 (2 for a range). */
  readonly digits?: number;
  /** Unit to print in, as `readUnit` reads it, instead of the one that suits the size. */
  readonly unit?: string;
  /** `field` prints rates as t/ha or ton/acre; `density` prints mass per volume as g/cm³ or lb/cu ft. */
  readonly form?: 'field' | 'density';
  /** Sign of the currency, for money. */
  readonly currency?: string;
}

interface Rung {
  readonly symbol: string;
  readonly unit: Unit;
}
const rungs = new Map<string, Rung>();

function rung(symbol: string): Rung {
  const known = rungs.get(symbol);
  if (known !== undefined) return known;
  // An alkalinity printed as calcium carbonate: 1 meq/L is 50.043 mg/L.
  const unit =
    symbol === 'mg/L CaCO3'
      ? { ...unitOf('gpg'), symbol, factor: unitOf('°fH').factor / 10, ucum: 'mg{CaCO3}/L' }
      : unitOf(symbol);
  const made = { symbol, unit };
  rungs.set(symbol, made);
  return made;
}

function choose(
  value: number,
  dimension: Exclude<Dimension, 'money'>,
  system: UnitSystem,
  options: PrintOptions,
): Rung {
  if (options.unit !== undefined) return rung(options.unit);
  const zero = value === 0 && options.form === undefined ? zeros[dimension]?.[system] : undefined;
  if (zero !== undefined) return rung(zero);
  const ladder =
    (options.form === undefined ? undefined : forms[options.form][dimension]?.[system]) ?? ladders[dimension][system];
  const digits = options.digits ?? 3;
  let chosen = rung(ladder[ladder.length - 1]?.[0] ?? '');
  for (const [symbol, from] of ladder) {
    const candidate = rung(symbol);
    if (significant(Math.abs(fromSi(value, candidate.unit)), digits) >= from) {
      chosen = candidate;
      break;
    }
  }
  return chosen;
}

const written = (value: number, unit: Unit, digits: number): string => {
  const number = fromSi(value, unit);
  // A thermometer is read to a degree, and 0.04 °C is no more precise than 20 °C.
  return plainNumber(
    unit.kind === 'temperature' ? Number(number.toFixed(Math.max(0, digits - 2))) + 0 : significant(number, digits),
  );
};

const join = (number: string, symbol: string): string => (symbol === '%' ? `${number}%` : `${number} ${symbol}`);

/** Two decimals and the person's own sign; the sign stands before the number. */
export const printMoney = (value: number, currency = ''): string => `${currency}${value.toFixed(2)}`;

/**
 * Prints an SI value in metric or US customary units that suit its size.
 *
 * @param value SI value of the dimension, finite
 * @param digits significant digits, 1 to 15, default 3: enough for any tape or scale in a garden
 * @throws RangeError when the value is not finite or `options.unit` is no unit
 */
export function print(value: number, dimension: Dimension, system: UnitSystem, options: PrintOptions = {}): string {
  if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be printed as ${dimension}`);
  if (dimension === 'money') return printMoney(value, options.currency);
  const { symbol, unit } = choose(value, dimension, system, options);
  return join(written(value, unit, options.digits ?? 3), symbol);
}

/**
 * Prints a range in one unit, the one that suits its upper end: `180 to 320 g/m²`; one figure when both ends print alike.
 *
 * @throws RangeError when an end is not finite
 */
export function printRange(
  low: number,
  high: number,
  dimension: Dimension,
  system: UnitSystem,
  options: PrintOptions = {},
): string {
  if (!Number.isFinite(low) || !Number.isFinite(high)) throw new RangeError(`${low} to ${high} cannot be printed`);
  if (dimension === 'money') return `${printMoney(low, options.currency)} to ${printMoney(high, options.currency)}`;
  const digits = options.digits ?? 2;
  const larger = Math.abs(low) > Math.abs(high) ? low : high;
  const { symbol, unit } = choose(larger, dimension, system, { ...options, digits });
  const [from, to] = [written(low, unit, digits), written(high, unit, digits)];
  return join(from === to ? from : `${from} to ${to}`, symbol);
}
