import type { Recorder } from '../derivation/derivation.ts';
import type { Fraction, Ph } from '../units/si.ts';

/**
 * Manganese availability index of a Mehlich-3 test: 101.7 + 3.75 Mn − 15.2 pH, Mn in mg/kg. Below 25 short, above 100 a
 * caution. The unit of Mn is not printed; mg/kg makes the index agree with its own limit (4 mg/kg at pH 6 gives 25.5).
 *
 * @param manganese Mehlich-3, mass fraction, 0 or more
 * @param ph in water
 * @throws RangeError for a negative level or a pH outside 0 to 14
 * @source njaes-levels
 */
export function manganeseIndex(manganese: Fraction, ph: Ph, recorder?: Recorder): number {
  if (!(manganese >= 0 && manganese <= 1))
    throw new RangeError(`manganese must be a share of the soil, got ${manganese}`);
  if (!(ph >= 0 && ph <= 14)) throw new RangeError(`pH must lie between 0 and 14, got ${ph}`);
  const ppm = manganese * 1e6;
  const index = 101.7 + 3.75 * ppm - 15.2 * ph;
  if (recorder)
    recorder.step({
      symbol: 'MnAI',
      title: 'Manganese availability index',
      formula: '101.7 + 3.75 Mn − 15.2 pH',
      terms: [
        { symbol: 'Mn', value: ppm, unit: 'mg/kg', origin: 'entered' },
        { symbol: 'pH', value: ph, unit: 'pH', origin: 'entered' },
      ],
      value: index,
      unit: '1',
      sources: ['njaes-levels'],
      basis: 'read',
      note: 'The unit of Mn is not printed; mg/kg fits the published limit.',
    });
  return index;
}
