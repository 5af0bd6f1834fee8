import type { Problem } from '@sorrel/engine/derivation';
import { label } from '../../words/label.ts';
import type { PlaceEntry } from './draft.ts';

/** Entries of the form that can be wrong. */
export type FormField = 'name' | 'size' | 'count' | 'volume' | 'depth' | 'organicMatter' | 'plants' | 'other';
export type Faults = Readonly<Partial<Record<FormField, string>>>;

/** Where a field of the document stands in the form. */
const fields: readonly (readonly [start: string, field: FormField])[] = [
  ['name', 'name'],
  ['size', 'size'],
  ['area', 'size'],
  ['pots.count', 'count'],
  ['pots', 'volume'],
  ['depth', 'depth'],
  ['soil.organicMatter', 'organicMatter'],
  ['plants', 'plants'],
];

/**
 * What is wrong with a place, by the field of the form that says it.
 *
 * @param others names of the garden's other places
 * @param problems what the engine's reader found in a garden of this place alone
 */
export function faultsOf(entry: PlaceEntry, others: readonly string[], problems: readonly Problem[]): Faults {
  const faults: Partial<Record<FormField, string>> = {};
  if (entry.name === '') faults.name = label('web.edit-name-missing');
  else if (others.some((name) => name.toLowerCase() === entry.name.toLowerCase()))
    faults.name = label('web.edit-name-taken');
  const mine = problems.filter(
    (problem) => problem.place !== undefined && !/^(tests|applications|materials)/.test(problem.field),
  );
  for (const problem of mine) {
    const field = fields.find(([start]) => problem.field.startsWith(start))?.[1] ?? 'other';
    faults[field] ??= `${problem.message} ${problem.fix}`;
  }
  return faults;
}
