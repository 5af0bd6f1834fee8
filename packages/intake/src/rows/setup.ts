import type { Quantity } from '@sorrel/almanac/report-columns';
import type { DateOrder } from '../cells/date.ts';
import type { Decimal } from '../cells/number.ts';
import type { Returned } from './returned.ts';

/** One column that is used: where it stands and what is done to its cells. */
export interface UsedColumn {
  readonly at: number;
  readonly title: string;
  readonly means: string;
  /** Column of a table of soil tests that it becomes. */
  readonly to: string;
  readonly quantity: Quantity;
  readonly element: '' | 'Ca' | 'Mg' | 'K' | 'Na' | 'Al';
  readonly oxide: string;
  /** A plain figure times it is in the unit of the column it becomes; undefined when every cell carries its unit. */
  readonly factor: number | undefined;
  /** Unit as written, for sizes that the engine reads with their unit. */
  readonly unit: string | undefined;
}

/** Everything a reader of rows needs. Plain data, so that it can be sent to another thread. */
export interface RowsSetup {
  readonly titles: readonly string[];
  readonly delimiter: string;
  /** Rows stand after this line. */
  readonly after: number;
  readonly columns: readonly UsedColumn[];
  /** Columns of a table of soil tests that hold the same in every row. */
  readonly same: readonly (readonly [string, string])[];
  readonly decimal: Decimal | undefined;
  readonly dates: DateOrder | undefined;
  /** Rows of a workbook end at their last full cell. */
  readonly ragged: boolean;
  readonly returned: Returned | undefined;
}
