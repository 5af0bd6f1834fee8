import type { MessageCode } from '@sorrel/almanac/words';
import type { Dimension } from '../units/dimension.ts';

/** A number with its dimension, so that the reader's own units can be printed. `share` is a chance or a percentage, 0 to 1. */
export interface Measured {
  readonly value: number;
  readonly dimension: Dimension | 'ph' | 'share';
}

export type Parameter = string | number | Measured;

/**
 * A sentence to be said, as a code and its parameters. The words live in the almanac's catalogue
 * (`words/`), one template a code, so that every screen, page and language says the same thing.
 */
export interface Message {
  readonly code: MessageCode;
  readonly parameters?: Readonly<Record<string, Parameter>>;
}
