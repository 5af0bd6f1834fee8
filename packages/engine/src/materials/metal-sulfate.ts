import type { Recorder } from '../derivation/derivation.ts';
import type { Fraction } from '../units/si.ts';

/** kg CaCO3 of acid per kg of metal: two H per iron, three H per aluminium (CALC). */
const PER_IRON = 1.792;
const PER_ALUMINIUM = 5.564;

/**
 * Acid of an iron sulfate from the % Fe on its label, kg CaCO3 per kg (negative): `a = −1.792 Fe`.
 *
 * @param iron kg Fe per kg, 0 to 0.37
 * @source CALC
 */
export const ironSulfateAcidity = (iron: Fraction, recorder?: Recorder): number =>
  fromMetal('Fe', iron, PER_IRON, recorder);

/**
 * Acid of an aluminum sulfate from the % Al on its label, kg CaCO3 per kg (negative): `a = −5.564 Al`.
 *
 * @param aluminium kg Al per kg, 0 to 0.16
 * @source CALC
 */
export const aluminiumSulfateAcidity = (aluminium: Fraction, recorder?: Recorder): number =>
  fromMetal('Al', aluminium, PER_ALUMINIUM, recorder);

function fromMetal(metal: 'Fe' | 'Al', share: Fraction, perMetal: number, recorder?: Recorder): number {
  const value = -perMetal * share;
  if (recorder)
    recorder.step({
      symbol: 'a',
      title: 'Acid of the product from the metal on its label',
      formula: `a = −k · ${metal}`,
      terms: [
        { symbol: 'k', value: perMetal, unit: `kg CaCO3/kg ${metal}`, origin: 'table', source: 'CALC' },
        { symbol: metal, value: share, unit: 'kg/kg', origin: 'entered' },
      ],
      value,
      unit: 'kg CaCO3/kg',
      sources: ['CALC'],
      basis: 'derived',
    });
  return value;
}
