import * as z from 'zod';
import { basis, list, number, optionalNumber, optionalText, ph, sources, text } from './columns.ts';

/** One plant: medians of its published best limits on soil in water, and the cautious published limits beyond them. */
export const row = z.strictObject({
  key: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'small letters, digits and hyphens'),
  name: text,
  /** What else people call it. */
  also: list,
  botanical: text,
  family: text,
  group: z.enum([
    'annual flower',
    'bulb',
    'cover crop',
    'herb',
    'lawn',
    'perennial flower',
    'shrub',
    'small fruit',
    'tree',
    'tree fruit',
    'vegetable',
    'vine',
  ]),
  reaction: z.enum(['acid-loving', 'neutral', 'lime-loving', 'lime-tolerant']),
  low: ph,
  high: ph,
  /** How far the sources lie apart, pH units. */
  lowSpread: number,
  highSpread: number,
  toleratesLow: optionalNumber,
  toleratesHigh: optionalNumber,
  aim: ph,
  sourceCount: number,
  /** Of those, how many were seen in print. */
  readCount: number,
  containerLow: optionalNumber,
  containerHigh: optionalNumber,
  sources,
  basis,
  note: optionalText,
});
