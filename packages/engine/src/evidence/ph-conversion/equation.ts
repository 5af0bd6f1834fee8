import type { PhConversionRow } from '@sorrel/almanac/ph-conversions';
import type { Fraction, SiemensPerMetre } from '../../units/si.ts';

/** What some equations ask for beside the pH. */
export interface EquationFacts {
  readonly conductivity?: SiemensPerMetre;
  readonly organicMatter?: Fraction;
}

/** S/m to dS/m, the unit the published equations take. */
const DECI = 10;

/**
 * A published pH equation as printed: `y = a + b·x + c·EC + d·OM`, or `y = a + b·log10 x`.
 * EC in dS/m and OM in % inside; both are given here in SI.
 *
 * @param row equation of the almanac table `ph-conversions`
 * @param x pH on the equation's `from` scale
 * @returns pH on the `to` scale; NaN when the equation needs a conductivity that is not given
 */
export function applyEquation(row: PhConversionRow, x: number, facts?: EquationFacts): number {
  const salt = row.per_ec === undefined ? 0 : row.per_ec * (facts?.conductivity ?? Number.NaN) * DECI;
  const organic = row.per_om === undefined ? 0 : row.per_om * (facts?.organicMatter ?? 0) * 100;
  return row.intercept + row.slope * (row.form === 'log' ? Math.log10(x) : x) + salt + organic;
}

/** The same equation solved for x. */
export function invertEquation(row: PhConversionRow, y: number, facts?: EquationFacts): number {
  const salt = row.per_ec === undefined ? 0 : row.per_ec * (facts?.conductivity ?? Number.NaN) * DECI;
  const organic = row.per_om === undefined ? 0 : row.per_om * (facts?.organicMatter ?? 0) * 100;
  const x = (y - row.intercept - salt - organic) / row.slope;
  return row.form === 'log' ? 10 ** x : x;
}
