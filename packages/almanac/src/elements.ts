import { type Row, rows } from './generated/elements.ts';

export type ElementRow = Row;
export const elements: readonly ElementRow[] = rows;

const bySymbol = new Map(rows.map((row) => [row.symbol, row]));

/** One element by its symbol, e.g. `Ca`; undefined when the table lacks it. */
export const element = (symbol: string): ElementRow | undefined => bySymbol.get(symbol);
