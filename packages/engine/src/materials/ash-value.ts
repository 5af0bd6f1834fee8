import type { Fraction } from '../units/si.ts';
import { type Contents, pierreSum } from './pierre.ts';

/**
 * Liming value of an ash from its analysis, kg CaCO3 per kg: bases less sulfur, chlorine and phosphorus.
 *
 * @param contents calcium, magnesium, potassium, sodium, sulfur, chlorine, phosphorus as mass fractions
 * @source POLASH (gross 1.04, net 0.95, derived)
 */
export const ashNeutralisingValue = (contents: Omit<Contents, 'N'>): number => pierreSum(contents);

/**
 * Neutralising value of a material that replaces a known amount of limestone, kg CaCO3 per kg.
 *
 * @param limestone kg of limestone it replaces
 * @param material kg of the material (> 0)
 * @param limestoneValue neutralising value of that limestone; 1 when nothing is said
 * @throws RangeError when there is no material
 * @source UNHASH, NCASHQ
 */
export function valueBySubstitution(limestone: number, material: number, limestoneValue: Fraction = 1): number {
  if (!(material > 0)) throw new RangeError(`material must weigh more than 0 kg, got ${material}`);
  return (limestone * limestoneValue) / material;
}
