import * as z from 'zod';
import { basis, optionalNumber, optionalText, sources, text } from './columns.ts';

/** What a column of a laboratory's table can mean. */
export const row = z.strictObject({
  meaning: text,
  title: text,
  /** What its cells hold; `other` is recognised and left alone. */
  quantity: z.enum([
    'text',
    'date',
    'word',
    'plants',
    'ph',
    'lime-index',
    'share',
    'charge',
    'nutrient',
    'conductivity',
    'length',
    'rate',
    'count',
    'area',
    'volume',
    'alkalinity',
    'other',
  ]),
  /** Column of a table of soil tests that it becomes; empty when it is recognised but not needed. */
  column: optionalText,
  element: z.enum(['Ca', 'Mg', 'K', 'Na', 'Al', '']),
  /**
   * Where nearly all real figures lie, in the unit whose factor is 1 in `report-units`: own judgement (SORREL), to find
   * a column that is not what its title says. The sources of the row stand for its meaning.
   */
  low: optionalNumber,
  high: optionalNumber,
  sources,
  basis,
  note: optionalText,
});
