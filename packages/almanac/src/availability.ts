import { type Row, rows } from './generated/availability.ts';

export type AvailabilityRow = Row;
/** How usable each nutrient is along the pH scale, by series and medium. */
export const availability: readonly AvailabilityRow[] = rows;
