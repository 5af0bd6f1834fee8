import * as z from 'zod';
import { basis, list, sources, text } from './columns.ts';

/** USDA classes as rings of corner numbers. */
export const row = z.strictObject({
  code: text,
  ring: list,
  sources,
  basis,
});
