import * as z from 'zod';
import { optionalText, text } from './columns.ts';

export const row = z.strictObject({
  key: text,
  title: text,
  institution: optionalText,
  year: optionalText,
  address: optionalText,
  note: optionalText,
});
