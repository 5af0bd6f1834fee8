import { type GardenDocument, rowColumns, rowReader } from '@sorrel/engine/document';
import { nearest } from '@sorrel/engine/units';
import { checkTest } from './check-test.ts';
import type { TestEntry } from './draft.ts';
import { columnName, type NewPlace, placeColumns, rowEntry } from './row-entry.ts';
import { splitTable } from './split-table.ts';

export interface ImportRow {
  readonly line: number;
  /** Name of the place as the row or the chosen place gives it. */
  readonly name: string;
  /** What becomes of the row. */
  readonly fate: 'adds' | 'adds-place' | 'there' | 'no-place' | 'bad';
  readonly test?: TestEntry;
  /** Id of the place it goes to; undefined for a new one. */
  readonly place?: string;
  readonly newPlace?: NewPlace;
  /** Why it cannot be used, each with what to write instead. */
  readonly faults: readonly { readonly message: string; readonly fix: string }[];
}

export interface ImportPlan {
  readonly known: readonly string[];
  /** Headings nobody knows, with the known one that was perhaps meant. */
  readonly unknown: readonly { readonly title: string; readonly meant: string | undefined }[];
  /** Whether the table has columns about the places themselves. */
  readonly ofPlaces: boolean;
  readonly rows: readonly ImportRow[];
}

interface Options {
  readonly today: string;
  readonly region?: string | undefined;
  readonly places: readonly { readonly id: string; readonly entry: GardenDocument['places'][number] }[];
  /** Id of the place for rows that name none. */
  readonly fallback?: string | undefined;
  readonly day: string;
  readonly newPlaces: boolean;
}

const plain = (name: string): string => name.trim().toLowerCase();

/** Works out what a pasted table would add. Every row is accounted for: nothing is dropped without a word. */
export function planImport(text: string, options: Options): ImportPlan {
  const [head, ...lines] = splitTable(text);
  if (head === undefined) return { known: [], unknown: [], ofPlaces: false, rows: [] };
  const header = head.cells;
  const { today, region } = options;
  const reader = rowReader(header, region === undefined ? { today } : { today, region });
  const known = header.map(columnName).filter((name) => rowColumns.includes(name));
  const rows = lines.map(({ cells, line }): ImportRow => {
    const { name, test, place } = rowEntry(header, cells, options.day);
    const target =
      name === ''
        ? options.places.find((each) => each.id === options.fallback)
        : options.places.find((each) => plain(each.entry.name) === plain(name));
    const shown = target?.entry.name ?? name;
    const read = reader.read(cells, line);
    if (!read.ok) return { line, name: shown, fate: 'bad', faults: read.problems };
    const faults = checkTest(test, today);
    if (faults.length > 0) return { line, name: shown, fate: 'bad', faults };
    const dated = region === undefined || test.region !== undefined ? test : { ...test, region };
    if (target !== undefined) {
      const there = target.entry.tests?.some((each) => each.date === test.date && each.ph?.value === test.ph?.value);
      if (there) return { line, name: shown, fate: 'there', test, faults: [] };
      return { line, name: shown, fate: 'adds', test: dated, place: target.id, faults: [] };
    }
    if (name === '' || !options.newPlaces) return { line, name: shown, fate: 'no-place', test, faults: [] };
    return { line, name, fate: 'adds-place', test: dated, newPlace: place, faults: [] };
  });
  const unknown = header
    .filter((title) => title.trim() !== '' && !rowColumns.includes(columnName(title)))
    .map((title) => ({ title, meant: nearest(columnName(title), rowColumns) }));
  return { known, unknown, ofPlaces: known.some((name) => placeColumns.has(name)), rows };
}
