import { en, type MessageCode } from '@sorrel/almanac/words';
import type { Problem } from '../derivation/problem.ts';
import { fill } from '../units/fill.ts';

type Words = Readonly<Record<string, string | number>>;

/** The sentence of a problem. Its parameters are plain words: what the person typed is never converted. */
export const sentence = (code: MessageCode, words: Words = {}): string =>
  fill(en[code], (name) => String(words[name] ?? `{${name}}`));

/**
 * Builds a problem from its code; `code` gives what is wrong and `code.fix` (or `fix`) how to mend it.
 *
 * @param where place and field as the person wrote them
 * @param value the entry as it was typed
 */
export function problem(
  code: MessageCode,
  where: { readonly place?: string | undefined; readonly field: string },
  value: unknown,
  words: Words = {},
  fix: MessageCode = `${code}.fix` as MessageCode,
): Problem {
  const all: Words = { field: where.field, value: shown(value), ...words };
  const { field, place } = where;
  const message = sentence(code, all);
  const mend = sentence(fix, all);
  return place === undefined
    ? { code, field, value, message, fix: mend }
    : { code, field, value, message, fix: mend, place };
}

/** An entry in few words, for the middle of a sentence. */
export function shown(value: unknown): string {
  if (value === undefined) return 'missing';
  if (value === null || value === '') return 'empty';
  if (Array.isArray(value)) return value.length === 1 ? 'a list of one' : `a list of ${value.length}`;
  if (typeof value === 'object') return 'a group of entries';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  const text = String(value);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}
