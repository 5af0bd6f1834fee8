import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text } from './columns.ts';

/** Dissociation constants of acids whose form decides what roots can take. */
export const row = z.strictObject({
  substance: text,
  element: text,
  pk1: number,
  pk2: optionalNumber,
  pk3: optionalNumber,
  sources,
  basis,
  note: optionalText,
});
