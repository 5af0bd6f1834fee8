import { z } from '@hono/zod-openapi';
import { by, documentRef, id, version } from './shared.ts';

export const gardenLine = z
  .object({
    id,
    name: z.string(),
    places: z.int().min(0),
    version,
    invented: z.boolean().openapi({ description: 'Put in for trying Sorrel out; nothing in it is real.' }),
  })
  .openapi('GardenLine');

export const gardenList = z.object({ gardens: z.array(gardenLine) }).openapi('GardenList');

export const newGarden = z
  .strictObject({
    by,
    id: id.optional().openapi({ description: 'Id of the new garden. When it is there already, nothing is done.' }),
    document: documentRef.openapi({ description: 'A garden document.' }),
  })
  .openapi('NewGarden');

const origins = z.object({
  places: z.array(z.object({ id, tests: z.array(id), applications: z.array(id) })),
  materials: z.array(id),
});

export const garden = z
  .object({
    id,
    version,
    document: documentRef,
    from: origins.openapi({
      description: 'Which thing of the record each part of the document came from, in its order.',
    }),
  })
  .openapi('Garden');

export const place = z
  .object({
    id,
    garden: id,
    version,
    place: z.looseObject({ name: z.string() }).openapi({ description: 'The place as the garden document holds it.' }),
    from: z.object({ id, tests: z.array(id), applications: z.array(id) }),
  })
  .openapi('PlaceOfGarden');

export const imported = z
  .object({
    garden: id,
    added: z.int().min(0).openapi({ description: 'Entries that were new to this store.' }),
    known: z.int().min(0).openapi({ description: 'Entries it already had.' }),
    photos: z.int().min(0),
  })
  .openapi('Imported');

export const settings = z
  .object({
    latest: id.openapi({ description: 'Entry that wrote them last: send it as `seen` with a change.' }),
    by: z.string(),
    at: z.string(),
    settings: z.looseObject({ garden: z.string() }).openapi({
      description: 'The head of the garden document: name, units, region, climate, risk and so on.',
    }),
  })
  .openapi('GardenSettings');

export const newSettings = z
  .strictObject({
    id: id.optional().openapi({ description: 'Id of the entry that says so; sent twice, it counts once.' }),
    by,
    at: z.string().optional().openapi({ description: 'When it was written; now when left out.' }),
    seen: id
      .optional()
      .openapi({ description: 'The `latest` the writer saw. When it is no longer so, this is refused.' }),
    settings: z.looseObject({ garden: z.string().openapi({ description: 'Name of the garden.' }) }),
  })
  .openapi('NewGardenSettings');
