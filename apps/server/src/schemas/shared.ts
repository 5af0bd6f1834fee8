import { z } from '@hono/zod-openapi';

/** A UUID of version 7 in small letters, made by whoever writes. */
export const id = z
  .uuidv7()
  .lowercase()
  .openapi({ description: 'A UUID of version 7 in small letters.', example: '01890a5d-ac96-774b-bcce-b302099a8057' });

export const gardenParam = z.object({ garden: id.openapi({ param: { name: 'garden', in: 'path' } }) });
export const placeParam = gardenParam.extend({ place: id.openapi({ param: { name: 'place', in: 'path' } }) });

/** Who writes. There are no accounts yet: a name people in one garden know each other by. */
export const by = z.string().min(1).max(200).openapi({ description: 'Who writes.', example: 'anna' });

export const version = z.int().min(0).openapi({
  description: 'Number of the newest entry of the garden. As long as it stays, nothing has changed.',
});

/** A garden document; its schema is put in from the engine when the description is written. */
export const documentRef = z.looseObject({}).openapi('GardenDocument');
/** One entry of the record; its schema is put in from the store. */
export const entryRef = z.looseObject({}).openapi('Entry');

export const receipt = z
  .object({
    id,
    garden: id,
    number: z.int().min(1).openapi({ description: "Its number in the garden's record." }),
    fresh: z.boolean().openapi({ description: 'False when it was there already: it was sent again.' }),
  })
  .openapi('Receipt');
