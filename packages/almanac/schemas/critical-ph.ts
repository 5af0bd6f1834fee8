import * as z from 'zod';
import { basis, optionalText, ph, sources, text } from './columns.ts';

/** pH below which growth of a crop may suffer on mineral soil. */
export const row = z.strictObject({
  crop: text,
  /** Key of the plant in the plants table, where it is one of ours. */
  plant: optionalText,
  ph,
  sources,
  basis,
  note: optionalText,
});
