import type { Recorder } from '../derivation/derivation.ts';
import type { Fraction, KgPerM2, Metre, MolPerM3 } from '../units/si.ts';
import { CACO3_PER_CHARGE } from './caco3.ts';

/**
 * Lime that irrigation water brings, kg CaCO3/m²: `E = 0.0500 A d (1 − f)`.
 *
 * @param alkalinity A, mol_c/m³ (= meq/L), 0 to about 10
 * @param depth d, water given, m (1 mm = 0.001)
 * @param drained f, share that runs through, 0 to 1
 * @source CALC (100 mg CaCO3/L gives 23.6 g per inch on 100 sq ft)
 */
export function waterLoad(alkalinity: MolPerM3, depth: Metre, drained: Fraction = 0, recorder?: Recorder): KgPerM2 {
  const value = CACO3_PER_CHARGE * alkalinity * depth * (1 - drained);
  if (recorder)
    recorder.step({
      symbol: 'E_w',
      title: 'Lime brought by the water',
      formula: 'E_w = m_eq · A · d · (1 − f)',
      terms: [
        { symbol: 'm_eq', value: CACO3_PER_CHARGE, unit: 'kg CaCO3/mol', origin: 'table', source: 'CALC' },
        { symbol: 'A', value: alkalinity, unit: 'mol/m³', origin: 'entered' },
        { symbol: 'd', value: depth, unit: 'm', origin: 'entered' },
        { symbol: 'f', value: drained, unit: '', origin: 'choice' },
      ],
      value,
      unit: 'kg CaCO3/m²',
      sources: ['CALC'],
      basis: 'derived',
    });
  return value;
}
