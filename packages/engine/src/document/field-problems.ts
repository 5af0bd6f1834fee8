import type { Problem } from '../derivation/problem.ts';
import { nearest } from '../units/nearest.ts';
import { type Path, pathText } from './path.ts';
import { problem } from './report.ts';

/** Place and field of an entry. */
export type Where = { readonly place?: string | undefined; readonly field: string };

export const missing = (where: Where, value: unknown, example: string | undefined): Problem =>
  example === undefined
    ? problem('document.missing', where, value)
    : problem('document.missing', where, value, { example }, 'document.missing-example.fix');

/** An entry nobody knows, with the nearest known one. */
export function unknownField(
  key: string,
  value: unknown,
  known: readonly string[],
  at: Path,
  place: string | undefined,
): Problem {
  const where = { place, field: pathText([...at, key]) };
  const near = nearest(key, known);
  return near === undefined
    ? problem(
        'document.unknown-field',
        where,
        value,
        { field: key, known: known.join(', ') },
        'document.unknown-field-far.fix',
      )
    : problem('document.unknown-field', where, value, { field: key, nearest: near });
}

/** A word that is none of the known ones. */
export function notAChoice(where: Where, value: unknown, known: readonly string[]): Problem {
  if (value === undefined) return missing(where, value, known.join(' or '));
  const words = { nearest: nearest(String(value), known) ?? known[0] ?? '', known: known.join(', ') };
  return problem('document.not-a-choice', where, value, words);
}
