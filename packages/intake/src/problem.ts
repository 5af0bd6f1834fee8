import { en, type MessageCode } from '@sorrel/almanac/words';
import type { Problem } from '@sorrel/engine/document';
import { fill } from '@sorrel/engine/units';

export type Words = Readonly<Record<string, string | number>>;

const LONGEST = 60;

/** What was written, in few words for the middle of a sentence. */
export const shown = (text: string): string => (text.length > LONGEST ? `${text.slice(0, LONGEST - 3)}...` : text);

/** A sentence of the catalogue with its words filled in. */
export const sentence = (code: MessageCode, words: Words = {}): string =>
  fill(en[code], (name) => (words[name] === undefined ? undefined : String(words[name])));

/**
 * Builds a problem of a row: what is wrong, and from `code.fix` how to mend it.
 *
 * @param field title of the column, as the sender writes it
 */
export function problem(code: MessageCode, field: string, value: string, words: Words = {}): Problem {
  const all = { field, value: shown(value), ...words };
  return { code, field, value, message: sentence(code, all), fix: sentence(`${code}.fix` as MessageCode, all) };
}
