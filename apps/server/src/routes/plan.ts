import { createRoute, z } from '@hono/zod-openapi';
import { writePlanReport } from '@sorrel/engine/document';
import type { GardenPlan } from '@sorrel/engine/plan';
import { type Api, json, serve } from '../http/api.ts';
import { problemContent } from '../http/problem-details.ts';
import type { Planner } from '../planned.ts';
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
  summary: 'What to do with each place, held to the forecast, and what to buy',
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

/** The plan for scripts, the same as on paper and on screen. */
export function addPlan(api: Api, planner: Planner): void {
  serve(api, route, async (c) => {
    const { explain, ...asked } = c.req.valid('query');
    const { read, plan, units } = await planner.plan(c.req.valid('param').garden, asked);
    return json(writePlanReport(read, explain === 'yes' ? plan : withoutWorking(plan), units));
  });
}

const withoutWorking = ({ recommendations, ...plan }: GardenPlan): GardenPlan => ({
  ...plan,
  recommendations: recommendations.map(({ derivation: _, ...recommendation }) => recommendation),
});
