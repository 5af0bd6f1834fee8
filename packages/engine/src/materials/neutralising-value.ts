import type { Recorder } from '../derivation/derivation.ts';
import { ok, type Result } from '../derivation/problem.ts';
import { CACO3_PER_CHARGE } from './caco3.ts';
import { excessBase } from './excess-base.ts';
import { molarMass, parseFormula } from './formula.ts';

/**
 * Theoretical calcium carbonate equivalent of a pure compound, kg CaCO3 per kg: `CCE = 0.0500 q / M`,
 * q the excess base per formula unit (mol_c/mol), M its molar mass (kg/mol). Negative for acids.
 *
 * @param formula e.g. `CaMg(CO3)2`, `FeSO4.7H2O`, `S`
 * @param leached share of nitrogen lost as nitrate, 0 to 1
 * @returns about −3.12 (sulfur) to 2.48 (MgO), or a problem for a formula that cannot be read
 * @source CALC; printed values PASSEL44, NYFS7 (rounded molar masses)
 */
export function neutralisingValueOf(formula: string, leached = 1, recorder?: Recorder): Result<number> {
  const parsed = parseFormula(formula);
  if (!parsed.ok) return parsed;
  const mass = molarMass(parsed.value);
  const charge = excessBase(parsed.value, leached);
  const value = (CACO3_PER_CHARGE * charge) / mass;
  if (recorder)
    recorder.step({
      symbol: 'CCE',
      title: `Calcium carbonate equivalent of pure ${formula}`,
      formula: 'CCE = m_eq · q / M',
      terms: [
        { symbol: 'm_eq', value: CACO3_PER_CHARGE, unit: 'kg CaCO3/mol', origin: 'table', source: 'CALC' },
        { symbol: 'q', value: charge, unit: 'mol_c/mol', origin: 'table', source: 'CALC' },
        { symbol: 'M', value: mass, unit: 'kg/mol', origin: 'table', source: 'CALC' },
      ],
      value,
      unit: 'kg CaCO3/kg',
      sources: ['CALC'],
      basis: 'derived',
    });
  return ok(value);
}
