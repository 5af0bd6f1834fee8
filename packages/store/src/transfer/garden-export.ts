import * as z from 'zod';
import { entry } from '../entry/entry.ts';
import { id } from '../entry/ids.ts';
import { photoTypes } from '../store/photos.ts';

export const exportVersion = 1;

const photo = z.strictObject({
  hash: z
    .string()
    .regex(/^[0-9a-f]{64}$/)
    .meta({ description: 'SHA-256 of the bytes, in hexadecimal.' }),
  type: z.enum(photoTypes),
  base64: z.base64().meta({ description: 'The bytes of the photo (RFC 4648, with padding).' }),
});

/** A whole garden in one file: every entry ever written in it, in the order of arrival, and the photos they show. */
export const gardenExport = z
  .strictObject({
    sorrel: z.literal('garden').meta({ description: 'What the file is.' }),
    version: z.literal(exportVersion).meta({ description: 'Version of this description.' }),
    garden: id.meta({ description: 'Id of the garden.' }),
    entries: z.array(entry).min(1),
    photos: z.array(photo),
  })
  .meta({
    title: 'Garden export',
    description: 'A garden with its whole record: entries, corrections, what was taken back, and photos.',
  });

/** The export as JSON Schema 2020-12. */
export const gardenExportJsonSchema = (): Record<string, unknown> =>
  z.toJSONSchema(gardenExport, { target: 'draft-2020-12', io: 'input', reused: 'ref' });
