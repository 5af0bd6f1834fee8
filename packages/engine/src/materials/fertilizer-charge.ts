import type { FertilizerRow } from '@sorrel/almanac/fertilizers';
import type { MaterialRow } from '@sorrel/almanac/materials';
import { CACO3_PER_NITROGEN } from './nitrogen-acidity.ts';

/** Nitrogen of a fertilizer and the charge it counts with. */
export interface NitrogenFeed {
  /** kg N per kg as sold. */
  readonly share: number;
  /** k of `E = −3.573 N (k + fL)`; what else the fertilizer holds (sulfate, lime) is counted into it. */
  readonly charge: number;
}

/** Share of the nitrogen that published figures of fertilizers take as leached (PIERRE33; NRCCA37). */
const PUBLISHED_LEACHED = 0.5;

/** k that gives a published acidity at half of the nitrogen leached: `k = −E/(3.573 N) − 0.5`. */
const chargeFrom = (currency: number, share: number): number =>
  -currency / (CACO3_PER_NITROGEN * share) - PUBLISHED_LEACHED;

/**
 * Nitrogen and charge of a fertilizer, from its published acidity: 1 for ammonium, 0 for urea, −1 for nitrate, within the
 * rounding of the print.
 *
 * @returns undefined for a fertilizer without nitrogen
 * @source ANR174, WFH-ORG by row; CALC
 */
export function chargeOfFertilizer(row: FertilizerRow): NitrogenFeed | undefined {
  const share = (row.nPercent ?? 0) / 100;
  return share > 0 ? { share, charge: chargeFrom(row.publishedKgCaco3Per100kg / 100, share) } : undefined;
}

/** The same for a material of the almanac that is used as a fertilizer. */
export function chargeOfMaterial(row: MaterialRow): NitrogenFeed | undefined {
  const share = row.nitrogen ?? 0;
  return row.role === 'fertilizer' && share > 0 ? { share, charge: chargeFrom(row.nvTypical, share) } : undefined;
}
