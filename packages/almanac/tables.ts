import { parse } from 'csv-parse/sync';
import type { ZodType } from 'zod';

type Row = Record<string, unknown>;

export interface CheckedTables {
  readonly tables: Record<string, readonly Row[]>;
  readonly problems: readonly string[];
}

/**
 * Parses and validates the almanac's tables.
 * Every table needs `schemas/<table>.ts` exporting `row`; every row with `sources` must cite known keys.
 *
 * @param names table names, without `.csv`
 * @param read gives the text of one table
 * @returns rows by table and every problem found, each naming table, line, column and fault
 */
export async function checkTables(names: readonly string[], read: (name: string) => string): Promise<CheckedTables> {
  const tables: Record<string, readonly Row[]> = {};
  const problems: string[] = [];
  for (const name of names) {
    const { row } = (await import(`./schemas/${name}.ts`)) as { row: ZodType<Row> };
    const records = parse(read(name), { columns: true, bom: true }) as Record<string, string>[];
    const rows: Row[] = [];
    for (const [index, record] of records.entries()) {
      const checked = row.safeParse(record);
      if (checked.success) rows.push(checked.data);
      else
        for (const issue of checked.error.issues)
          problems.push(`${name}.csv line ${index + 2}, ${issue.path.join('.')}: ${issue.message}`);
    }
    tables[name] = rows;
  }
  const known = new Set((tables.sources ?? []).map((source) => source.key));
  if (known.size !== (tables.sources ?? []).length) problems.push('sources.csv: a key stands twice');
  for (const [name, rows] of Object.entries(tables))
    for (const [index, row] of rows.entries())
      for (const key of (row.sources as string[] | undefined) ?? [])
        if (!known.has(key)) problems.push(`${name}.csv line ${index + 2}: source ${key} is not in sources.csv`);
  return { tables, problems };
}
