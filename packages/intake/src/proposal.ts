import type { Guess } from './columns/recognise.ts';
import type { Encoding } from './decode/encoding.ts';
import type { Header } from './dialect/header.ts';
import type { LineEnd } from './dialect/line-end.ts';
import type { Question } from './mapping/question.ts';
import type { Known } from './mapping/questions.ts';
import type { SenderMapping } from './mapping/schema.ts';
import type { TableRecord } from './records/split.ts';
import type { Returned } from './rows/returned.ts';

/** How a file is to be opened. */
export type FileForm =
  | {
      readonly kind: 'text';
      readonly encoding: Encoding;
      readonly delimiter: string;
      readonly lineEnd: LineEnd;
    }
  | { readonly kind: 'workbook'; readonly sheet: string; readonly sheets: readonly string[] };

/** One column of the file, for a person to confirm. */
export interface ProposedColumn {
  readonly title: string;
  /** Meaning it is given now, or `not-used`. */
  readonly means: string;
  /** The meaning in words. */
  readonly label: string;
  readonly unit?: string;
  readonly method?: string;
  /** 0 to 1. */
  readonly confidence: number;
  /** Why, as a sentence. */
  readonly reason: string;
  /** Whether it goes into the plan. */
  readonly used: boolean;
  /** Some of its cells. */
  readonly examples: readonly string[];
}

/** What a file seems to be: to be shown, asked about, and confirmed. */
export interface Proposal {
  readonly name: string;
  readonly form: FileForm;
  readonly header: Header;
  readonly columns: readonly ProposedColumn[];
  /** Open questions. Rows can be read when there are none. */
  readonly questions: readonly Question[];
  /** What is taken for granted because no column tells, as sentences. */
  readonly assumed: readonly string[];
  /** What will be remembered of this sender. */
  readonly mapping: SenderMapping;
  /** The remembered sender whose mapping was taken, and his columns that this file does not have. */
  readonly remembered?: { readonly sender: string | undefined; readonly gone: readonly string[] };
  /** Set when the file is a list of rows to mend that came back. */
  readonly returned?: Returned;
  /** First rows under the header, as they came. */
  readonly preview: readonly TableRecord[];
  /** What the questions are made from. */
  readonly seen: Omit<Known, 'mapping' | 'guesses'> & { readonly guesses: readonly Guess[] };
}
