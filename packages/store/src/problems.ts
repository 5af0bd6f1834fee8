import { en, type MessageCode } from '@sorrel/almanac/words';
import type { Problem } from '@sorrel/engine/derivation';

type Words = Readonly<Record<string, string | number>>;

const fill = (template: string, words: Words): string =>
  template.replace(/\{(\w+)\}/g, (whole, key: string) => String(words[key] ?? whole));

/**
 * Builds a problem of the store: `code` says what is wrong and `code.fix` how to mend it.
 *
 * @param field path of the field in the entry, or the part of the store that failed (`file`, `database`)
 * @param value the value as it was sent, shown in the sentence as it is
 * @param words further parameters of the two sentences
 */
export function problem(
  code: Extract<MessageCode, `store.${string}`>,
  field: string,
  value: unknown,
  words: Words = {},
): Problem {
  const all: Words = { field, value: typeof value === 'number' ? value : String(value), ...words };
  const fix = en[`${code}.fix` as MessageCode];
  return { code, field, value, message: fill(en[code], all), fix: fill(fix, all) };
}

/** Carries problems out of a transaction, which it thereby rolls back. Never leaves this package. */
export class Refusal extends Error {
  readonly problems: readonly Problem[];
  constructor(...problems: Problem[]) {
    super(problems[0]?.message ?? 'refused');
    this.problems = problems;
  }
}
