import { createRoute, z } from '@hono/zod-openapi';
import { readGarden, writePlanReport } from '@sorrel/engine/document';
import { planGarden } from '@sorrel/engine/plan';
import { type Api, json, serve } from '../http/api.ts';
import { problemContent } from '../http/problem-details.ts';
import { orRefuse } from '../http/store-refusals.ts';
import { type Room, todayOf } from '../room.ts';
import { gardenParam } from '../schemas/shared.ts';

const yesNo = z.enum(['yes', 'no']);
export const planQuery = z.object({
  asOf: z.iso.date().optional().openapi({ description: "The day planned for; the garden's own, else today." }),
  units: z
    .enum(['metric', 'us'])
    .optional()
    .openapi({ description: "Units of the sentences; the garden's own, else metric." }),
});

const route = createRoute({
  method: 'get',
  path: '/api/gardens/{garden}/plan',
  tags: ['plan'],
  summary: 'What to do with each place, and what to buy',
  request: {
    params: gardenParam,
    query: planQuery.extend({
      explain: yesNo.optional().openapi({ description: 'yes: with the working of every figure.' }),
    }),
  },
  responses: {
    200: {
      description: 'The plan in SI units, each sentence with its code and its text',
      content: { 'application/json': { schema: z.looseObject({}).openapi('PlanReport') } },
    },
    404: problemContent('No such garden'),
    422: problemContent('The question has wrong entries'),
  },
});

/** A garden of the store, read and planned; its places carry the ids they have in the record. */
export async function planOf(room: Room, garden: string, asked: z.output<typeof planQuery>, explain: boolean) {
  const { document, from } = orRefuse(await room.store.assemble(garden));
  const today = todayOf(room);
  const read = readGarden(document, { today, ...(asked.asOf === undefined ? {} : { asOf: asked.asOf }) });
  // The reader numbers places as the document has them, from 1, and leaves out those it cannot use.
  const ids = new Map(from.places.map(({ id }, index) => [`place-${index + 1}`, id]));
  const places = read.garden.places.map((place) => ({ ...place, id: ids.get(place.id) ?? place.id }));
  const known = { ...read, garden: { ...read.garden, places } };
  return { read: known, plan: planGarden(known.garden, { explain }), units: asked.units ?? read.units ?? 'metric' };
}

/** The plan for scripts; the web app plans in the browser. */
export function addPlan(api: Api, room: Room): void {
  serve(api, route, async (c) => {
    const { explain, ...asked } = c.req.valid('query');
    const { read, plan, units } = await planOf(room, c.req.valid('param').garden, asked, explain === 'yes');
    return json(writePlanReport(read, plan, units));
  });
}
