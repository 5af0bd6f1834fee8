import { type PotFlagRow, potFlags } from '@sorrel/almanac/pot-flags';
import type { Basis } from '../derivation/derivation.ts';
import type { Ph } from '../units/si.ts';

export type PotFlag = 'ok' | 'iron deficiency risk' | 'iron and manganese toxicity risk';

export interface PotFlagged {
  readonly flag: PotFlag;
  /** The limit that was passed, or the published range of most mixes when the crop is not in the table. */
  readonly limit?: Ph;
  /** Whether the crop itself is in the table. */
  readonly known: boolean;
  readonly sources: readonly string[];
  readonly basis: Basis;
}

/** Most mixes should lie inside (canr-substrate); used for crops the table does not know. */
const GENERAL = { below: 5.4, above: 6.4 } as const;

/** The row of a crop by its name or another of its names, found inside a longer name too. */
export function potCrop(crop: string): PotFlagRow | undefined {
  const wanted = crop.trim().toLowerCase();
  return potFlags.find((row) => [row.crop, ...row.also].some((name) => wanted === name || hasWords(wanted, name)));
}

const hasWords = (text: string, words: string): boolean =>
  ` ${text.replace(/[^a-z]+/g, ' ').trim()} `.replace(/s /g, ' ').includes(` ${words} `.replace(/s /g, ' '));

/**
 * Whether a crop in a potting mix is in danger of too little iron, or of too much iron and manganese.
 *
 * @param ph of the mix, by extract or pour-through, 0 to 14
 * @throws RangeError outside 0 to 14
 * @source umd-2006, umd-2008, canr-substrate
 */
export function potFlag(crop: string, ph: Ph): PotFlagged {
  if (!(ph >= 0 && ph <= 14)) throw new RangeError(`pH must lie between 0 and 14, got ${ph}`);
  const row = potCrop(crop);
  const below = row === undefined ? GENERAL.below : row.below;
  const above = row === undefined ? GENERAL.above : row.above;
  const sources = row?.sources ?? ['canr-substrate'];
  const basis = row?.basis ?? 'read';
  const known = row !== undefined;
  if (above !== undefined && ph > above) return { flag: 'iron deficiency risk', limit: above, known, sources, basis };
  if (below !== undefined && ph < below)
    return { flag: 'iron and manganese toxicity risk', limit: below, known, sources, basis };
  return { flag: 'ok', known, sources, basis };
}
