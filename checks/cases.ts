import { type Info, parse } from 'csv-parse/sync';
import type { CheckCase } from './adapter.ts';

/** A case with the line it starts on, for messages. */
export interface PlacedCase extends CheckCase {
  readonly line: number;
}

/** A row that could not be used, and why. It is reported, never passed over. */
export interface BadRow {
  readonly line: number;
  readonly id: string;
  readonly fault: string;
}

export interface CaseFile {
  readonly cases: readonly PlacedCase[];
  readonly bad: readonly BadRow[];
}

const columns = ['id', 'case', 'inputs_json', 'expected_json', 'tolerance', 'source', 'basis', 'note'] as const;
const needed = ['id', 'inputs_json', 'expected_json'] as const;

type Json = Readonly<Record<string, unknown>>;

/**
 * Reads a file of published cases: CSV with the columns `id, case, inputs_json, expected_json, tolerance, source,
 * basis, note` in any order. A faulty row, a repeated id or broken JSON becomes a `BadRow`; the rest is still read.
 *
 * @throws Error when the text has no header with at least `id`, `inputs_json` and `expected_json`
 */
export function readCases(text: string): CaseFile {
  const bad: BadRow[] = [];
  const rows = parse(text, {
    bom: true,
    info: true,
    relax_column_count: true,
    relax_quotes: true,
    skip_empty_lines: true,
    skip_records_with_error: true,
    on_skip: (error) => {
      bad.push({ line: Number(error?.lines ?? 0), id: '', fault: error?.message ?? 'cannot be read' });
      return undefined;
    },
  }) as unknown as { record: string[]; info: Info }[];
  const header = rows[0]?.record.map((cell) => cell.trim().toLowerCase()) ?? [];
  const lacking = needed.filter((name) => !header.includes(name));
  if (lacking.length > 0) throw new Error(`no column ${lacking.join(', ')} (columns are ${columns.join(', ')})`);

  const cases: PlacedCase[] = [];
  const seen = new Map<string, number>();
  for (const { record, info } of rows.slice(1)) {
    const cell = (name: string) => record[header.indexOf(name)]?.trim() ?? '';
    // The parser counts lines at a record's end; quoted cells may hold line breaks.
    const line = info.lines - record.join('').split('\n').length + 1;
    const id = cell('id');
    const faults: string[] = [];
    if (record.length !== header.length) faults.push(`${record.length} cells where the header has ${header.length}`);
    if (id === '') faults.push('id is empty');
    else if (seen.has(id)) faults.push(`id already stands on line ${seen.get(id)}`);
    const inputs = object(cell('inputs_json'), 'inputs_json', faults);
    const expected = object(cell('expected_json'), 'expected_json', faults);
    if (expected && Object.keys(expected).length === 0) faults.push('expected_json names no figure');
    if (id !== '' && !seen.has(id)) seen.set(id, line);
    if (faults.length > 0 || !inputs || !expected) bad.push({ line, id, fault: faults.join('; ') });
    else {
      const [title, tolerance, source] = [cell('case'), cell('tolerance'), cell('source')];
      cases.push({ id, title, inputs, expected, tolerance, source, basis: cell('basis'), note: cell('note'), line });
    }
  }
  return { cases, bad: bad.sort((a, b) => a.line - b.line) };
}

function object(text: string, column: string, faults: string[]): Json | undefined {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value as Json;
    faults.push(`${column} is not an object: ${text.slice(0, 60)}`);
  } catch (error) {
    faults.push(`${column} is not JSON: ${(error as Error).message}`);
  }
  return undefined;
}
