import { createRoute, z } from '@hono/zod-openapi';
import { type Api, json, serve } from '../http/api.ts';
import { atMost, photoOnly, photoTypes } from '../http/body.ts';
import { problemContent, Refusal } from '../http/problem-details.ts';
import { orRefuse, refusalOf } from '../http/store-refusals.ts';
import { redrawPhoto } from '../photo.ts';
import type { Room } from '../room.ts';
import { words } from '../words.ts';

const hash = z
  .string()
  .regex(/^[0-9a-f]{64}$/)
  .openapi({ description: 'SHA-256 of the photo as it is kept.' });
const picture = { schema: z.string().openapi({ format: 'binary' }) };

const send = createRoute({
  method: 'post',
  path: '/api/photos',
  tags: ['photos'],
  summary: 'Keep a photo, drawn anew without what the camera wrote into it; then name it in an observation',
  middleware: [photoOnly, atMost('photo')] as const,
  request: { body: { required: true, content: Object.fromEntries(photoTypes.map((type) => [type, picture])) } },
  responses: {
    201: {
      description: 'Its name',
      content: {
        'application/json': {
          schema: z.object({ photo: hash, width: z.int().min(1), height: z.int().min(1) }).openapi('KeptPhoto'),
        },
      },
    },
    413: problemContent('Too large'),
    415: problemContent('Not sent as a photo'),
    422: problemContent('Not a photo'),
  },
});

const show = createRoute({
  method: 'get',
  path: '/api/photos/{photo}',
  tags: ['photos'],
  summary: 'A photo',
  request: { params: z.object({ photo: hash.openapi({ param: { name: 'photo', in: 'path' } }) }) },
  responses: {
    200: { description: 'The photo', content: { 'image/jpeg': picture } },
    404: problemContent('No such photo'),
  },
});

/** Photos of leaves and beds. */
export function addPhotos(api: Api, { store }: Room): void {
  serve(api, send, async (c) => {
    const drawn = await redrawPhoto(new Uint8Array(await c.req.arrayBuffer()));
    if (!drawn.ok) throw refusalOf(drawn.problems);
    const { type, bytes, width, height } = drawn.value;
    const { hash: photo } = orRefuse(await store.putPhoto(type, bytes));
    return json({ photo, width, height }, 201, { location: `/api/photos/${photo}` });
  });

  serve(api, show, async (c) => {
    const asked = c.req.valid('param').photo;
    const found = orRefuse(await store.photo(asked));
    if (found === undefined) throw new Refusal('not-found', words.noPhoto(asked));
    return new Response(new Uint8Array(found.bytes), {
      // Its name is its content, so it never changes.
      headers: { 'content-type': found.type, 'cache-control': 'private, max-age=31536000, immutable' },
    });
  });
}
