import { createRoute, z } from '@hono/zod-openapi';
import { climateRows } from '@sorrel/almanac/climates';
import { materials } from '@sorrel/almanac/materials';
import { methodRows } from '@sorrel/almanac/methods';
import { plants } from '@sorrel/almanac/plants';
import type { Api } from '../http/api.ts';
import { type Asset, asset, serveAsset } from '../http/asset.ts';
import { problemContent } from '../http/problem-details.ts';

const lists = { plants, materials, methods: methodRows, climates: climateRows } as const;
const names = ['plants', 'materials', 'methods', 'climates'] as const;

const route = createRoute({
  method: 'get',
  path: '/api/reference/{list}',
  tags: ['reference'],
  summary: 'A list of the almanac, each row with its sources and how the figure is known',
  request: { params: z.object({ list: z.enum(names).openapi({ param: { name: 'list', in: 'path' } }) }) },
  responses: {
    200: {
      description: 'All rows. Send the ETag back as If-None-Match to ask whether they have changed.',
      content: {
        'application/json': {
          schema: z.array(z.looseObject({ sources: z.array(z.string()), basis: z.string() })).openapi('ReferenceRows'),
        },
      },
    },
    304: { description: 'Unchanged' },
    404: problemContent('No such list'),
  },
});

/** Plants, materials, methods and climates, for lists to choose from. */
export function addReference(api: Api): void {
  const built = new Map<string, Asset>();
  api.openapi(route, ({ req }) => {
    const { list } = req.valid('param');
    const known = built.get(list) ?? asset(new TextEncoder().encode(JSON.stringify(lists[list])), 'application/json');
    built.set(list, known);
    return serveAsset(known, req.raw) as never;
  });
}
