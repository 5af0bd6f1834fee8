import { type Row, rows } from './generated/acid-rates.ts';

export type AcidRateRow = Row;
export const acidRates: readonly AcidRateRow[] = rows;

/** Base that a crop carries away. */
export interface CropBase {
  readonly crop: string;
  /** kg CaCO3 per kg of the crop as weighed: the middle of what is printed, with its ends. */
  readonly base: number;
  readonly low: number;
  readonly high: number;
  readonly sources: readonly string[];
  readonly basis: Row['basis'];
}

const PRODUCT = /^product: (.+?)(?:, fresh)?$/;

/** Rows of products, printed as kg CaCO3 a tonne. */
export const cropBases: readonly CropBase[] = rows.flatMap((row) => {
  const name = PRODUCT.exec(row.setting)?.[1];
  if (name === undefined) return [];
  const [low = 0, high = low] = row.value.split('-').map((part) => Number(part) / 1000);
  const crop = name === 'vegetables, leafy' ? 'leafy vegetables' : name;
  return [{ crop, base: (low + high) / 2, low, high, sources: row.sources, basis: row.basis }];
});

const byCrop = new Map(cropBases.map((row) => [row.crop, row]));
export const cropBaseOf = (crop: string): CropBase | undefined => byCrop.get(crop);
