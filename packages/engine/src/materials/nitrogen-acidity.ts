import { type NitrogenForm, nitrogenFormOf } from '@sorrel/almanac/nitrogen-forms';
import type { Recorder } from '../derivation/derivation.ts';
import type { Fraction, Kilogram } from '../units/si.ts';
import { CACO3_PER_CHARGE } from './caco3.ts';

/** kg CaCO3 per kg N for one H per nitrogen: 3.573. */
export const CACO3_PER_NITROGEN = CACO3_PER_CHARGE / 0.014007;

/**
 * Share of nitrogen lost as nitrate below the roots (fL) when nobody measured it.
 *
 * @source judgement on ACIDCROP, NRCCA37 and STRIPN: 0.5 sandy or heavily watered, 0.3 loam, 0.1 light split feeding
 */
export const LEACHED_SHARE = { sandy: 0.5, loam: 0.3, 'light feeding': 0.1 } as const;

/**
 * What fertilizer nitrogen does to the account, kg CaCO3 (negative is acid): `E = −3.573 N (k + fL)`.
 * Denitrified or volatilised nitrogen counts as not leached.
 *
 * @param nitrogen kg N (or kg N/m²), >= 0
 * @param form how the nitrogen is bound; k is +1 ammonium salts, 0 urea and organic, −1 nitrate
 * @param leached fL, 0 to 1; 0.5 reproduces the classic factors 5.4, 1.8 and −1.8, 1 the maxima 7.1, 3.6 and 0
 * @throws RangeError for a share outside 0 to 1
 * @source CALC; NRCCA37, CROPACID, STRIPN, NSWN
 */
export function nitrogenAcidity(
  nitrogen: Kilogram,
  form: NitrogenForm,
  leached: Fraction,
  recorder?: Recorder,
): number {
  if (!(leached >= 0 && leached <= 1)) throw new RangeError(`leached must lie between 0 and 1, got ${leached}`);
  const { k } = nitrogenFormOf(form);
  const value = -CACO3_PER_NITROGEN * nitrogen * (k + leached);
  if (recorder)
    recorder.step({
      symbol: 'E_N',
      title: 'Acid left by fertilizer nitrogen',
      formula: 'E_N = −c_N · N · (k + fL)',
      terms: [
        { symbol: 'c_N', value: CACO3_PER_NITROGEN, unit: 'kg CaCO3/kg N', origin: 'table', source: 'CALC' },
        { symbol: 'N', value: nitrogen, unit: 'kg', origin: 'entered' },
        { symbol: 'k', value: k, unit: '', origin: 'table', source: 'CALC' },
        { symbol: 'fL', value: leached, unit: '', origin: 'choice' },
      ],
      value,
      unit: 'kg CaCO3',
      sources: ['CALC', 'NRCCA37'],
      basis: 'derived',
    });
  return value;
}
