import * as z from 'zod';
import { basis, optionalNumber, optionalText, sources, text, yesNo } from './columns.ts';
import { limitGroup } from './limit-groups.ts';

export const row = z.strictObject({
  group: z.union([limitGroup, z.literal('magnesium sulfate')]),
  situation: text,
  published: text,
  unit: optionalText,
  /** What the figure counts: kg CaCO3 by neutralising value (fineness not counted), or kg as sold. */
  measure: z.enum(['currency', 'mass']),
  kgPerM2: optionalNumber,
  kgPerM3: optionalNumber,
  monthsApart: optionalNumber,
  kgPerM2Year: optionalNumber,
  timesPerYear: optionalNumber,
  /** Number of parts when the total is above the row's lower edge. */
  applications: optionalNumber,
  default: yesNo,
  sources,
  basis,
  note: optionalText,
});
