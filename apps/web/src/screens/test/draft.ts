import type { GardenDocument } from '@sorrel/engine/document';
import { joinQuantity, splitQuantity } from '../../kit/quantity.tsx';
import { allFigures, type FigureField } from './figures.ts';

export type TestEntry = NonNullable<GardenDocument['places'][number]['tests']>[number];

/** What stands in the fields, by path in the test; `#unit` behind a path holds its unit. */
export interface Draft {
  readonly values: Readonly<Record<string, string>>;
  /** Keys of the figures picked. */
  readonly picked: readonly string[];
}

/** Entries every test has, whatever the paper prints. */
const headFields: readonly Pick<FigureField, 'path' | 'type' | 'units'>[] = [
  { path: 'date', type: 'text' },
  { path: 'by', type: 'text' },
  { path: 'laboratory', type: 'text' },
  { path: 'region', type: 'text' },
  { path: 'depth', type: 'quantity', units: ['cm', 'in'] },
  { path: 'cores', type: 'number' },
  { path: 'note', type: 'text' },
];

export const unitPath = (path: string): string => `${path}#unit`;

/** A number with a decimal point or comma; what is no number stays as it was typed, so that its check can say so. */
export function numberOf(text: string): number | string {
  const plain = text.trim().replace(',', '.');
  const value = Number(plain);
  return plain === '' || Number.isNaN(value) ? text : value;
}

/** The test as it will be stored: only what was picked and filled in. */
export function contentOf({ values, picked }: Draft): TestEntry {
  const fields = [
    ...headFields,
    ...allFigures.filter((figure) => picked.includes(figure.key)).flatMap((figure) => figure.fields),
  ];
  const content: Record<string, unknown> = {};
  for (const field of fields) {
    const text = values[field.path]?.trim() ?? '';
    if (text === '') continue;
    const value =
      field.type === 'number'
        ? numberOf(text)
        : field.type === 'quantity'
          ? joinQuantity(text, values[unitPath(field.path)] ?? field.units?.[0] ?? '')
          : text;
    put(content, field.path, value);
  }
  // A group of which only a choice was made is no entry yet, and its check will ask for the rest.
  return content as unknown as TestEntry;
}

/** The fields of a test that is in the record. */
export function draftOf(content: TestEntry): Draft {
  const values: Record<string, string> = {};
  const fill = (field: Pick<FigureField, 'path' | 'type' | 'units'>): boolean => {
    const value = at(content, field.path);
    if (value === undefined) return false;
    if (field.type === 'quantity') {
      const parts = splitQuantity(String(value), field.units?.[0] ?? '');
      values[field.path] = parts.value;
      values[unitPath(field.path)] = parts.unit;
    } else values[field.path] = String(value);
    return true;
  };
  for (const field of headFields) fill(field);
  const american = (content as { readonly aluminum?: string }).aluminum;
  const picked = allFigures
    .filter(
      (figure) => figure.fields.map(fill).includes(true) || (figure.key === 'aluminium' && american !== undefined),
    )
    .map((figure) => figure.key);
  if (american !== undefined) {
    const parts = splitQuantity(american, 'meq/100 g');
    values.aluminium = parts.value;
    values[unitPath('aluminium')] = parts.unit;
  }
  return { values, picked };
}

function put(content: Record<string, unknown>, path: string, value: unknown): void {
  const [group, name] = path.split('.');
  if (group === undefined) return;
  if (name === undefined) content[group] = value;
  else content[group] = { ...(content[group] as object | undefined), [name]: value };
}

function at(content: object, path: string): unknown {
  let value: unknown = content;
  for (const part of path.split('.')) value = (value as Record<string, unknown> | undefined)?.[part];
  return value;
}
