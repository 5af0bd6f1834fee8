import { type Row, rows } from './generated/elements.ts';

export type ElementRow = Row;

const bySymbol = new Map(rows.map((row) => [row.symbol, row.massGPerMol]));

/** Relative atomic mass, g/mol; `undefined` for an element no material of the almanac holds. */
export const atomicMass = (symbol: string): number | undefined => bySymbol.get(symbol);
