import { acidForms } from '@sorrel/almanac/acid-forms';
import { freeIons } from '@sorrel/almanac/free-ions';
import type { Recorder } from '../derivation/derivation.ts';
import type { Fraction, Ph } from '../units/si.ts';

export type Substance = 'phosphate' | 'boric acid' | 'ammonium';

/**
 * Share of an acid's dissolved amount that has lost a number of protons: phosphate 1 is H2PO4−, boric acid 0 is the
 * uncharged acid, ammonium 0 is NH4+.
 *
 * @param lost protons lost, 0 to the number of the acid's constants
 * @param ph 0 to 14, dilute solution at 25 °C
 * @throws RangeError for an unknown substance, a form it does not have, or a pH outside the scale
 * @source dissociation constants: chem-text (memory)
 */
export function acidShare(substance: Substance, lost: number, ph: Ph, recorder?: Recorder): Fraction {
  const row = acidForms.find((one) => one.substance === substance);
  if (row === undefined) throw new RangeError(`The acid-forms table has no ${substance}`);
  const pks = [row.pk1, row.pk2, row.pk3].filter((pk) => pk !== undefined);
  if (!Number.isInteger(lost) || lost < 0 || lost > pks.length)
    throw new RangeError(`${substance} loses 0 to ${pks.length} protons, not ${lost}`);
  if (!(ph >= 0 && ph <= 14)) throw new RangeError(`pH must lie between 0 and 14, got ${ph}`);
  // Amount of each form beside the one wanted, on the log scale, so that nothing overflows.
  let log = 0;
  const logs = [0, ...pks.map((pk) => (log += ph - pk))];
  const wanted = logs[lost] ?? 0;
  const share = 1 / logs.reduce((sum, each) => sum + 10 ** (each - wanted), 0);
  if (recorder)
    recorder.step({
      symbol: 'share',
      title: `Share of dissolved ${substance} in the form that has lost ${lost} proton${lost === 1 ? '' : 's'}`,
      formula: '1 / Σ 10^(Σ(pH − pK) of each form − that of this form)',
      terms: [
        { symbol: 'pH', value: ph, unit: 'pH', origin: 'entered' },
        ...pks.map((pk, index) => ({
          symbol: `pK${index + 1}`,
          value: pk,
          unit: '1',
          origin: 'table' as const,
          source: row.sources[0] ?? '',
        })),
      ],
      value: share,
      unit: '1',
      sources: row.sources,
      basis: row.basis,
    });
  return share;
}

/** Share of dissolved phosphate as H2PO4−, the form roots take most of. */
export const dihydrogenPhosphateShare = (ph: Ph, recorder?: Recorder): Fraction =>
  acidShare('phosphate', 1, ph, recorder);

/** Share of dissolved boron as uncharged boric acid, the only form that enters roots (barrow-hartemink-2023). */
export const boricAcidShare = (ph: Ph, recorder?: Recorder): Fraction => acidShare('boric acid', 0, ph, recorder);

/**
 * How many times the activity of a free ion over its mineral changes between two pH. Only the free ion: what plants
 * find moves far less, because humus holds the metals and air and roots change them, so it is never shown as usability.
 *
 * @param element Fe, Zn, Cu, Mn, Al or Mo
 * @returns undefined for an element the table has no ion of
 * @source lindsay-1979 (memory)
 */
export function freeIonFactor(element: string, from: Ph, to: Ph, recorder?: Recorder): number | undefined {
  const row = freeIons.find((one) => one.element === element);
  if (row === undefined) return undefined;
  const factor = 10 ** (row.perPh * (to - from));
  if (recorder)
    recorder.step({
      symbol: 'f',
      title: `Change of free ${row.ion}`,
      formula: '10^(slope (pH2 − pH1))',
      terms: [
        { symbol: 'pH1', value: from, unit: 'pH', origin: 'entered' },
        { symbol: 'pH2', value: to, unit: 'pH', origin: 'entered' },
        { symbol: 'slope', value: row.perPh, unit: '1/pH', origin: 'table', source: row.sources[0] ?? '' },
      ],
      value: factor,
      unit: '1',
      sources: row.sources,
      basis: row.basis,
      note: 'The free ion only; what plants find moves far less.',
    });
  return factor;
}
