import type { KgPerM2, Ph } from '../../units/si.ts';
import { KG_PER_M2, type RateUnit } from './rate.ts';
import { amountFrom, columnFor, rateTable } from './rate-table.ts';

export interface PublishedSulfur {
  /** kg S/m²; `low` and `high` differ only where the publication prints a range. */
  readonly low: KgPerM2;
  readonly high: KgPerM2;
  /** In the publication's own unit. */
  readonly as: { readonly low: number; readonly high: number; readonly unit: RateUnit };
  /** False when read off between printed figures. */
  readonly printed: boolean;
  readonly sources: readonly string[];
  readonly basis: 'read' | 'memory' | 'derived' | 'judgement';
}

/**
 * Sulfur (100 % S) a publication gives for soil without free lime, to check ours against. A lookup, not advice.
 *
 * @param publication citation key, e.g. `MSU-R`
 * @param texture column heading or texture class; may be left out where the table has one column
 * @param from present pH
 * @param to target pH; at or above `from` the amount is 0
 * @returns `undefined` for a publication, texture or pH the almanac has no figure for
 * @source almanac `sulfur-rates`
 */
export function sulfurPublished(
  publication: string,
  texture: string | undefined,
  from: Ph,
  to: Ph,
): PublishedSulfur | undefined {
  const column = columnFor(rateTable(publication), texture);
  if (column === undefined) return undefined;
  const amount = amountFrom(column, from, to);
  if (amount === undefined) return undefined;
  const factor = KG_PER_M2[column.unit];
  const [row] = column.rows;
  return {
    low: amount.low * factor,
    high: amount.high * factor,
    as: { low: amount.low, high: amount.high, unit: column.unit },
    printed: amount.printed,
    sources: row?.sources ?? [],
    basis: row?.basis ?? 'memory',
  };
}
