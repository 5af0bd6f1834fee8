import * as z from 'zod';
import { basis, optionalText, sources, text } from './columns.ts';

/** What spoils a soil sample; `key` names its sentence `sampling.spoil-<key>`. */
export const row = z.strictObject({ key: text, effect: text, sources, basis, note: optionalText });
