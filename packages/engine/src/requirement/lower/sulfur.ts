import type { Recorder } from '../../derivation/derivation.ts';
import { CACO3_PER_CHARGE } from '../../materials/caco3.ts';
import { sulfurFor } from '../../materials/sulfur-equivalent.ts';
import type { BufferCapacity, Fraction, KgPerM2, MolPerKg } from '../../units/si.ts';

/** kg S that give 1 mol H+: 32.06/2000 (CALC). */
const SULFUR_PER_MOL = sulfurFor(CACO3_PER_CHARGE);

/** Share of the acid that acts in the treated layer of open ground (own judgement; 0.6 to 1). */
export const ACID_ACTING = 0.85;

/** Buffer capacity as acid per soil, mol/kg/pH, from kg CaCO3/kg/pH. 1 cmol/kg/pH = 0.01. */
export const capacityAsCharge = (beta: BufferCapacity): MolPerKg => beta / CACO3_PER_CHARGE;
/** Buffer capacity in the engine's currency, kg CaCO3/kg/pH, from mol/kg/pH. */
export const capacityAsCarbonate = (beta: MolPerKg): BufferCapacity => beta * CACO3_PER_CHARGE;

/**
 * Pure sulfur that lowers the pH of a layer without free lime: `S = beta · M · dpH · 32.065/2000 / eta`.
 *
 * @param beta buffer capacity, mol H+ per kg dry soil per pH unit (> 0; 0.01 to 0.06 for most mineral soil)
 * @param mass dry fine soil in the layer, kg/m² (>= 0; about 200 in 15 cm)
 * @param drop wanted fall of pH; 0 or less needs no sulfur
 * @param eta share of the acid acting in the layer, over 0 to 1. Use 1 when beta comes from a published sulfur rate,
 *   which already holds the losses
 * @returns kg S/m² (100 % S)
 * @throws RangeError for a beta or mass below 0 or an eta outside its range
 * @source CHEM; eta judgement
 */
export function sulfurForCapacity(
  beta: MolPerKg,
  mass: KgPerM2,
  drop: number,
  eta: Fraction = ACID_ACTING,
  recorder?: Recorder,
): KgPerM2 {
  if (!(beta >= 0)) throw new RangeError(`buffer capacity must be 0 or more, got ${beta}`);
  if (!(mass >= 0)) throw new RangeError(`soil mass must be 0 or more, got ${mass}`);
  if (!(eta > 0 && eta <= 1)) throw new RangeError(`eta must be over 0 and at most 1, got ${eta}`);
  const sulfur = drop > 0 ? (beta * mass * drop * SULFUR_PER_MOL) / eta : 0;
  if (recorder)
    recorder.step({
      symbol: 'S',
      title: 'Sulfur to lower the pH',
      formula: 'S = beta · M · dpH · 32.065/2000 / eta',
      terms: [
        { symbol: 'beta', value: beta, unit: 'mol/kg/pH', origin: 'choice' },
        { symbol: 'M', value: mass, unit: 'kg/m2', origin: 'choice' },
        { symbol: 'dpH', value: drop, unit: 'pH', origin: 'entered' },
        { symbol: 'eta', value: eta, unit: '1', origin: 'choice' },
      ],
      value: sulfur,
      unit: 'kg/m2',
      sources: ['CHEM', 'SORREL'],
      basis: 'derived',
    });
  return sulfur;
}
