import type { Recorder } from '../derivation/derivation.ts';
import type { Fraction, Kilogram, MolPerKg } from '../units/si.ts';
import { CACO3_PER_CHARGE } from './caco3.ts';

/**
 * Liming value of compost or plant matter from its titratable alkalinity, kg CaCO3 per kg dry: `L = 0.0500 A`.
 * Understates fresh plant matter, whose anions are released as it rots.
 *
 * @param alkalinity mol_c per kg dry matter; 1 cmol/kg = 0.01
 * @source ICHA24
 */
export const organicLimeValue = (alkalinity: MolPerKg): number => alkalinity * CACO3_PER_CHARGE;

/**
 * What a dressing of compost or manure brings to the account, kg CaCO3: `E = m (1 − w) L`.
 *
 * @param mass kg as spread (or kg/m²)
 * @param moisture w, 0 to below 1
 * @param value L, kg CaCO3 per kg dry matter
 * @source ICHA24, NARA06; defaults of the almanac are from memory
 */
export function organicCurrency(mass: Kilogram, moisture: Fraction, value: number, recorder?: Recorder): number {
  const currency = mass * (1 - moisture) * value;
  if (recorder)
    recorder.step({
      symbol: 'E_org',
      title: 'Lime brought by compost or manure',
      formula: 'E_org = m · (1 − w) · L',
      terms: [
        { symbol: 'm', value: mass, unit: 'kg', origin: 'entered' },
        { symbol: 'w', value: moisture, unit: 'kg/kg', origin: 'choice' },
        { symbol: 'L', value, unit: 'kg CaCO3/kg', origin: 'table', source: 'ICHA24' },
      ],
      value: currency,
      unit: 'kg CaCO3',
      sources: ['ICHA24', 'NARA06'],
      basis: 'memory',
    });
  return currency;
}
