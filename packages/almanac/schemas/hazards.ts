import * as z from 'zod';
import { basis, sources, text } from './columns.ts';

export const row = z.strictObject({
  material: text,
  hazard: text,
  rule: text,
  sources,
  basis,
});
