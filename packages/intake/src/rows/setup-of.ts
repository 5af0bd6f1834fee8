import { meaningRow } from '../columns/meanings.ts';
import { titleKey } from '../columns/plain.ts';
import { IN_CELLS } from '../columns/recognise.ts';
import { factorOf, unitFor } from '../columns/units.ts';
import type { MappedColumn, SenderMapping } from '../mapping/schema.ts';
import type { RowsSetup, UsedColumn } from './setup.ts';

type File = Pick<RowsSetup, 'titles' | 'delimiter' | 'after' | 'ragged' | 'returned'>;

/** A sender's mapping laid over one file of his. Columns are found by their titles. */
export function setupOf(mapping: SenderMapping, file: File): RowsSetup {
  const at = new Map(file.titles.map((title, index) => [titleKey(title), index]));
  const columns = mapping.columns.flatMap((column): UsedColumn[] => {
    const index = at.get(titleKey(column.title));
    const used = index === undefined ? undefined : usedColumn(column, index, mapping);
    return used === undefined ? [] : [used];
  });
  const has = (to: string) => columns.some((each) => each.to === to);
  const same: [string, string][] = [];
  const hold = (to: string, value: string | number | undefined) => {
    if (value !== undefined && !has(to)) same.push([to, String(value)]);
  };
  hold('ph_method', mapping.columns.find((each) => each.means === 'ph' && each.method !== undefined)?.method);
  if (has('buffer_ph')) hold('buffer', mapping.columns.find((each) => each.buffer !== undefined)?.buffer);
  hold('laboratory', mapping.laboratory);
  hold('region', mapping.region);
  if (has('printed_rate')) {
    hold('printed_depth', mapping.lime?.depth);
    hold('printed_target', mapping.lime?.target);
    hold('printed_cce', mapping.lime?.purity);
  }
  return { ...file, columns, same, decimal: mapping.decimal, dates: mapping.dates };
}

function usedColumn(column: MappedColumn, at: number, { lime }: SenderMapping): UsedColumn | undefined {
  const row = meaningRow(column.means);
  if (row?.column === undefined) return undefined;
  if (row.column.startsWith('printed_') && lime?.use !== true) return undefined;
  const unit = column.unit === undefined || column.unit === IN_CELLS ? undefined : unitFor(column.unit, row);
  const plain = row.quantity === 'ph' || row.quantity === 'count' ? 1 : row.quantity === 'lime-index' ? 0.1 : undefined;
  return {
    at,
    title: column.title,
    means: column.means,
    to: row.column,
    quantity: row.quantity,
    element: row.element,
    oxide: column.oxide ?? '',
    factor: plain ?? (unit === undefined ? undefined : factorOf(unit, row, column.oxide)),
    unit: column.unit,
  };
}
