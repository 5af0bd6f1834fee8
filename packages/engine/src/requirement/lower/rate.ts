import type { SulfurRateRow } from '@sorrel/almanac/sulfur-rates';

export type RateUnit = SulfurRateRow['unit'];

const POUND = 0.45359237;
const SQUARE_FOOT = 0.09290304;
/** International acre, 43 560 square feet. */
const ACRE = 43560 * SQUARE_FOOT;

/** kg/m² in one of each unit in which sulfur rates are printed. */
export const KG_PER_M2: Readonly<Record<RateUnit, number>> = {
  'lb/acre': POUND / ACRE,
  'lb/1000 sq ft': POUND / (1000 * SQUARE_FOOT),
  'lb/100 sq ft': POUND / (100 * SQUARE_FOOT),
  'lb/10 sq ft': POUND / (10 * SQUARE_FOOT),
  'kg/ha': 1e-4,
  'g/m2': 1e-3,
};
