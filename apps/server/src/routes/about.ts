import { createRoute, z } from '@hono/zod-openapi';
import { gardenJsonSchema, planReportJsonSchema } from '@sorrel/engine/document';
import { entry, gardenExportJsonSchema } from '@sorrel/store';
import { type Api, json, serve } from '../http/api.ts';
import { asset, serveAsset } from '../http/asset.ts';
import { refuse } from '../http/problem-details.ts';
import type { Room } from '../room.ts';
import { problemKinds, words } from '../words.ts';

const health = createRoute({
  method: 'get',
  path: '/api/health',
  tags: ['about'],
  summary: 'Whether the server and its record work',
  responses: {
    200: {
      description: 'Both work',
      content: {
        'application/json': {
          schema: z
            .object({ status: z.literal('fine'), database: z.enum(['sqlite', 'postgres']), version: z.string() })
            .openapi('Health'),
        },
      },
    },
  },
});

const problems = createRoute({
  method: 'get',
  path: '/api/problems',
  tags: ['about'],
  summary: 'The kinds of refusal; the `type` of problem details points here',
  responses: {
    200: {
      description: 'Title and status of each',
      content: {
        'application/json': {
          schema: z.record(z.string(), z.object({ status: z.int(), title: z.string() })).openapi('ProblemKinds'),
        },
      },
    },
  },
});

/** How long the record may take to answer before it counts as gone, milliseconds. */
const patience = 3000;
const nobody = '00000000-0000-7000-8000-000000000000';
const version = process.env.SORREL_VERSION ?? 'unbuilt';

/** Health, the kinds of problem, and the description of the API. */
export function addAbout(api: Api, { store, stopping }: Room): void {
  serve(api, health, async () => {
    if (stopping()) return refuse('no-database', words.stopping);
    let timer: NodeJS.Timeout | undefined;
    const late = new Promise<undefined>((resolve) => {
      timer = setTimeout(resolve, patience, undefined);
    });
    // Whatever goes wrong here means the same to whoever asks; the cause is in the log of the request that met it.
    const found = await Promise.race([store.version(nobody).catch(() => undefined), late]);
    clearTimeout(timer);
    return found?.ok
      ? json({ status: 'fine', database: store.kind, version })
      : refuse('no-database', words.noDatabase);
  });

  serve(api, problems, () => json(problemKinds));

  const description = () => asset(new TextEncoder().encode(JSON.stringify(describe(api))), 'application/json');
  let written: ReturnType<typeof description> | undefined;
  api.get('/api/openapi.json', (c) => {
    written ??= description();
    return serveAsset(written, c.req.raw);
  });
}

/** The API as OpenAPI 3.1; the documents of other rooms are put in from the schemas those rooms check with. */
function describe(api: Api) {
  const written = api.getOpenAPI31Document({
    openapi: '3.1.0',
    info: {
      title: 'Sorrel',
      version,
      description: 'Gardens, their record and their plans. Quantities are text with a unit, as a gardener writes them.',
      license: { name: 'Apache License 2.0', url: 'https://www.apache.org/licenses/LICENSE-2.0' },
    },
  });
  const schemas = (written.components?.schemas ?? {}) as Record<string, unknown>;
  schemas.GardenDocument = inside('GardenDocument', withoutPlacesToo(gardenJsonSchema()));
  schemas.PlanReport = inside('PlanReport', planReportJsonSchema());
  schemas.GardenExport = inside('GardenExport', gardenExportJsonSchema());
  schemas.Entry = inside('Entry', z.toJSONSchema(entry, { target: 'draft-2020-12', io: 'input' }));
  for (const path of Object.values(written.paths ?? {}))
    for (const [method, operation] of Object.entries(path as Record<string, { responses: Record<string, unknown> }>))
      operation.responses = { ...operation.responses, ...always, ...(method === 'get' ? {} : { 403: otherSite }) };
  return written;
}

const problem = (description: string) => ({
  description,
  content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/ProblemDetails' } } },
});

/** What any route may answer. */
const always = {
  421: problem('Asked under a name this server does not answer to'),
  500: problem('A fault of the server'),
  503: problem('The record cannot be reached, or the server is stopping'),
};
const otherSite = problem('Sent by a page of another site');

/** A garden in the record may still be without a place; a document that is planned may not. */
function withoutPlacesToo(schema: Record<string, unknown>): Record<string, unknown> {
  const { places, ...properties } = schema.properties as Record<string, Record<string, unknown>>;
  return { ...schema, properties: { ...properties, places: { ...places, minItems: 0 } } };
}

/** A whole JSON Schema as a component: pointers from its root now start at the component. */
function inside(name: string, { $schema: _, $id: __, ...schema }: Record<string, unknown>): unknown {
  return JSON.parse(
    JSON.stringify(schema, (key, value) =>
      key === '$ref' && typeof value === 'string' && value.startsWith('#')
        ? `#/components/schemas/${name}${value.slice(1)}`
        : value,
    ),
  );
}
