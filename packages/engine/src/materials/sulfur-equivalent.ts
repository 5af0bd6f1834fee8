import { fail, ok, type Result } from '../derivation/problem.ts';
import { CACO3_PER_CHARGE } from './caco3.ts';
import { neutralisingValueOf } from './neutralising-value.ts';

/** kg CaCO3 that 1 kg of sulfur uses up once it is all oxidised: two H per S, 3.122 (CHEM, CALC). */
export const ACID_PER_SULFUR = (2 * CACO3_PER_CHARGE) / 0.03206;

/**
 * Pure sulfur that uses up an amount of CaCO3, kg: `S = 0.3203 m`.
 *
 * @param caco3 kg CaCO3 (or kg/m²), >= 0
 * @source CHEM
 */
export const sulfurFor = (caco3: number): number => caco3 / ACID_PER_SULFUR;

/**
 * Mass of an acidifying compound that does the work of 1 kg sulfur.
 *
 * @param formula e.g. `Al2(SO4)3.18H2O` (6.93) or `FeSO4.7H2O` (8.67)
 * @returns kg per kg S, or a problem when the formula cannot be read or leaves no acid
 * @source CALC; published ratios in the almanac table `fast-acidifiers`
 */
export function massPerSulfur(formula: string): Result<number> {
  const value = neutralisingValueOf(formula);
  if (!value.ok) return value;
  if (value.value >= 0)
    return fail({
      code: 'materials.not-acid',
      field: 'formula',
      value: formula,
      message: `${formula} leaves no acid in the soil.`,
      fix: 'Choose a material that acidifies, such as sulfur.',
    });
  return ok(ACID_PER_SULFUR / -value.value);
}
