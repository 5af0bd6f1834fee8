/** What is wrong with an entry, where, and how to mend it. Shown as it is; never thrown across a room. */
export interface Problem {
  readonly code: string;
  /** Place name or row label the entry belongs to, when there is one. */
  readonly place?: string;
  /** Path of the field as the person wrote it, e.g. `tests[0].ph.value`. */
  readonly field: string;
  /** The value as entered. */
  readonly value: unknown;
  /** One sentence: what is wrong. */
  readonly message: string;
  /** One sentence: what to enter instead. */
  readonly fix: string;
}

/** A value, or the reasons there is none. */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export const ok = <T>(value: T): Result<T> => ({ ok: true, value });
export const fail = (...problems: Problem[]): Result<never> => ({ ok: false, problems });
