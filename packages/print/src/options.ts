import type { Catalogue } from '@sorrel/almanac/words';
import type { IsoDate, UnitSystem } from '@sorrel/engine/units';

export type Paper = 'a4' | 'us-letter';

/** What every printed page must know. */
export interface PrintOptions {
  /** Units of the reader. */
  readonly system: UnitSystem;
  /** Day of printing, given by the caller: this room has no clock. */
  readonly printed: IsoDate;
  /** Default: `us-letter` for US units, `a4` for metric. */
  readonly paper?: Paper;
  /** Words of another language than English, with the language's code (BCP 47). */
  readonly catalogue?: Catalogue;
  readonly language?: string;
  /** Font files (TTF, OTF) for scripts that the packaged letters lack, such as Chinese, Japanese and Korean. */
  readonly fonts?: readonly string[];
  /** Sign of the money, for the shopping list; default none. */
  readonly currencySymbol?: string;
}

export const paperOf = (options: PrintOptions): Paper =>
  options.paper ?? (options.system === 'us' ? 'us-letter' : 'a4');
