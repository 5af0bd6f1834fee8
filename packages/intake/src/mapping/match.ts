import { titleKey } from '../columns/plain.ts';
import type { MappedColumn, SenderMapping } from './schema.ts';

/** Share of a file's columns that a remembered mapping must know before it is taken to be of the same sender. */
const ENOUGH = 0.6;

export interface Match {
  readonly mapping: SenderMapping;
  /** The remembered column of each column of the file. */
  readonly columns: readonly (MappedColumn | undefined)[];
  /** Remembered columns that the file does not have. */
  readonly gone: readonly string[];
}

/** The remembered sender that writes like this file, if there is one: most of its columns have the same titles. */
export function matchSender(titles: readonly string[], senders: readonly SenderMapping[]): Match | undefined {
  let best: Match | undefined;
  let most = 0;
  for (const mapping of senders) {
    const known = new Map(mapping.columns.map((column) => [titleKey(column.title), column]));
    const columns = titles.map((title) => known.get(titleKey(title)));
    const found = columns.filter((column) => column !== undefined).length;
    const share = titles.length === 0 ? 0 : found / Math.max(titles.length, mapping.columns.length);
    if (share < ENOUGH || share <= most) continue;
    const here = new Set(titles.map(titleKey));
    most = share;
    best = {
      mapping,
      columns,
      gone: mapping.columns.filter((column) => !here.has(titleKey(column.title))).map((column) => column.title),
    };
  }
  return best;
}
