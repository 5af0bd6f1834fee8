import { type Row, rows } from './generated/bags.ts';

export type BagRow = Row;
/** Rough bag sizes and prices, from memory: the person overwrites them. */
export const bags: readonly BagRow[] = rows;

export const bagsOf = (material: string): readonly BagRow[] => rows.filter((row) => row.material === material);
