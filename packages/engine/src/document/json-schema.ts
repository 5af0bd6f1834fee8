import * as z from 'zod';
import { gardenDocument } from './schema.ts';

/** The garden document as JSON Schema 2020-12, for editors and other programs. */
export const gardenJsonSchema = (): Record<string, unknown> => ({
  $id: 'https://sorrel.example/garden-document.schema.json',
  ...z.toJSONSchema(gardenDocument, { target: 'draft-2020-12', io: 'input' }),
});
