import * as z from 'zod';
import { basis, list, optionalNumber, optionalText, sources, text } from './columns.ts';

/** Pot crops that show iron trouble outside a pH of the mix: too little above, too much iron and manganese below. */
export const row = z.strictObject({
  crop: text,
  also: list,
  below: optionalNumber,
  above: optionalNumber,
  sources,
  basis,
  note: optionalText,
});
