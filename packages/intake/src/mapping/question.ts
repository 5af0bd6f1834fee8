import type { Message } from '@sorrel/engine/derivation';

export interface Choice {
  /** What `answer` takes. */
  readonly value: string;
  /** How it is said to a person. */
  readonly label: string;
}

/** Something about the file that only a person knows. Asked once, remembered for the sender. */
export interface Question {
  /** Names the question: `ph-method`, `unit: OM`, `dates`... Stays the same for the next file of the sender. */
  readonly id: string;
  readonly message: Message;
  /** The same as a sentence. */
  readonly text: string;
  /** Title of the column it is about. */
  readonly column?: string;
  /** What it can be answered with; empty when any text of the kind below will do. */
  readonly choices: readonly Choice[];
  /** What is wanted when there are no choices. */
  readonly wants?: 'length' | 'ph' | 'percent';
  /** The likeliest answer by the figures. Never taken without being told to. */
  readonly suggested?: string;
  /** Some cells of the column. */
  readonly examples: readonly string[];
}
