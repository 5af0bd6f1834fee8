import { units as words } from '@sorrel/almanac/words/en/units';
import { fail, type Problem, type Result } from '../derivation/problem.ts';
import type { Dimension } from './dimension.ts';
import { fill } from './fill.ts';
import type { Kind } from './unit-table.ts';

export interface Entry {
  readonly written: unknown;
  readonly dimension: Dimension;
  readonly field: string;
  readonly place?: string;
}

type Fault =
  | 'wrong-kind'
  | 'unknown-unit'
  | 'ambiguous-unit'
  | 'no-unit'
  | 'no-number'
  | 'empty'
  | 'too-long'
  | 'negative'
  | 'too-cold'
  | 'not-finite'
  | 'ambiguous-number'
  | 'range'
  | 'limit';

/** The last part of a field path in words: `tests[0].ph.value` is `ph`, `beds[2].bulkDensity` is `bulk density`. */
export function fieldName(path: string): string {
  const parts = path
    .replace(/\[\d+\]/g, '')
    .split('.')
    .filter((part) => part !== '');
  const last = parts.at(-1) === 'value' ? (parts.at(-2) ?? 'value') : (parts.at(-1) ?? 'value');
  return last.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();
}

/** In words, what a kind of unit measures: `a volume`. */
export const kindName = (kind: Kind): string => words[`units.kind.${kind}`];

/** A failed entry whose sentences name the field, the value, what is wrong and an example of what would do. */
export function refuse(entry: Entry, fault: Fault, values: Readonly<Record<string, string>> = {}): Result<never> {
  const all: Readonly<Record<string, string>> = {
    text: String(entry.written).trim(),
    field: fieldName(entry.field),
    wanted: kindName(entry.dimension),
    example: words[`units.example.${entry.dimension}`],
    ...values,
  };
  const fix =
    fault === 'unknown-unit' && values.nearest !== undefined
      ? 'units.unknown-unit.nearest'
      : (`units.${fault}.fix` as const);
  const sentence = (template: string) => {
    const filled = fill(template, (name) => all[name]);
    return filled.charAt(0).toUpperCase() + filled.slice(1);
  };
  const problem: Problem = {
    code: `units.${fault}`,
    ...(entry.place === undefined ? {} : { place: entry.place }),
    field: entry.field,
    value: entry.written,
    message: sentence(words[`units.${fault}`]),
    fix: sentence(words[fix]),
  };
  return fail(problem);
}
