import type { Composition } from './formula.ts';

/** Charge each element leaves in the soil: bases of strong cations, acid of strong anions. Fe, Al and Si end as oxides, C as CO2. */
const CHARGE: Readonly<Record<string, number>> = { Ca: 2, Mg: 2, K: 1, Na: 1, S: -2, Cl: -1, P: -1 };

/**
 * Base (positive) or acid (negative) that one formula unit leaves in the soil, mol_c per mol:
 * `q = 2 Ca + 2 Mg + K + Na − 2 S − Cl − P − fL N`.
 *
 * Sulfur of any kind is counted as oxidised to sulfate, phosphorus as H2PO4−, nitrogen taken up as neutral and
 * leached as nitrate. Organic acids count nothing: microbes use them up and give the alkalinity back.
 *
 * @param leached share of the nitrogen lost as nitrate (fL), 0 to 1; 1 when left out, which is also right for nitric acid in water
 * @source CALC; the same bookkeeping as PIERRE33 with fL = 0.5
 */
export function excessBase(composition: Composition, leached = 1): number {
  let charge = 0;
  for (const [element, n] of composition) charge += n * (element === 'N' ? -leached : (CHARGE[element] ?? 0));
  return charge;
}
