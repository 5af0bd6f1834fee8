import type { Recorder } from '../derivation/derivation.ts';
import { CACO3_PER_CHARGE } from './caco3.ts';

export interface Titration {
  /** Sample as received, kg (> 0); the statutory sample is 0.0005. */
  readonly sample: number;
  /** Strength of the acid, mol/m³ (> 0): 0.5 M is 500. */
  readonly acid: number;
  /** Acid used up, m³: added less back-titrated (>= 0). */
  readonly consumed: number;
}

/**
 * Neutralising value by titration with hydrochloric acid, kg CaCO3 per kg as received: `NV = 0.0500 c V / m`.
 * Not right above 3 % P2O5.
 *
 * @throws RangeError when the sample has no mass
 * @source UKNV (1 mL of 0.5 M HCl = 0.01402 g CaO), ISO20978
 */
export function titratedNeutralisingValue({ sample, acid, consumed }: Titration, recorder?: Recorder): number {
  if (!(sample > 0)) throw new RangeError(`sample must weigh more than 0 kg, got ${sample}`);
  const value = (CACO3_PER_CHARGE * acid * consumed) / sample;
  if (recorder)
    recorder.step({
      symbol: 'NV',
      title: 'Neutralising value by titration',
      formula: 'NV = m_eq · c · V / m',
      terms: [
        { symbol: 'm_eq', value: CACO3_PER_CHARGE, unit: 'kg CaCO3/mol', origin: 'table', source: 'CALC' },
        { symbol: 'c', value: acid, unit: 'mol/m³', origin: 'entered' },
        { symbol: 'V', value: consumed, unit: 'm³', origin: 'entered' },
        { symbol: 'm', value: sample, unit: 'kg', origin: 'entered' },
      ],
      value,
      unit: 'kg CaCO3/kg',
      sources: ['UKNV'],
      basis: 'read',
    });
  return value;
}
