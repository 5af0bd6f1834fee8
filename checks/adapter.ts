/** One row of a file of published cases, its JSON columns parsed. */
export interface CheckCase {
  readonly id: string;
  readonly title: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: Readonly<Record<string, unknown>>;
  readonly tolerance: string;
  readonly source: string;
  readonly basis: string;
  readonly note: string;
}

/**
 * Computes one kind of case through the engine's public functions. Adapters recognise a case by the shape of its
 * inputs and expected keys, never by its id or title, so that other files of the same columns can be run.
 */
export interface Adapter {
  readonly name: string;
  accepts(check: CheckCase): boolean;
  /** Our figures under the keys of `expected`. May throw: the runner reports it as a failed case. */
  compute(check: CheckCase): Readonly<Record<string, unknown>>;
}
