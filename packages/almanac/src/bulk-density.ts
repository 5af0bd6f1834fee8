import { type Row, rows } from './generated/bulk-density.ts';

export type BulkDensityRow = Row;

/** Bulk density by texture, material and medium, g/cm3. */
export const bulkDensity: readonly BulkDensityRow[] = rows;
