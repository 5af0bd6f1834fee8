import { createRoute, z } from '@hono/zod-openapi';
import { makeZip } from 'client-zip';
import { createDays, type Days } from '../day/days.ts';
import { summaryJson } from '../day/summary-json.ts';
import { type Api, json, serve } from '../http/api.ts';
import { atMost, jsonOnly } from '../http/body.ts';
import { problemContent, Refusal } from '../http/problem-details.ts';
import type { Room } from '../room.ts';
import { dayProgress, daySummary } from '../schemas/day.ts';
import { gardenParam } from '../schemas/shared.ts';
import { words } from '../words.ts';

const tags = ['soil day'];
const jsonOf = <S>(schema: S) => ({ 'application/json': { schema } });
const noSuch = problemContent('No such garden, or it is no soil day');
const wrong = problemContent('The question has wrong entries');
const notYet = problemContent('No sample is planned yet');
const units = z.enum(['metric', 'us']).optional().openapi({ description: "The garden's own, else metric." });
const query = z.object({ units, paper: z.enum(['a4', 'us-letter']).optional() });
const handoutQuery = query.extend({
  largePrint: z.enum(['yes', 'no']).optional(),
  contact: z.string().max(200).optional().openapi({ description: 'Name and telephone of who hands it out.' }),
});
const codeParam = gardenParam.extend({
  file: z.string().openapi({
    param: { name: 'file', in: 'path' },
    description: 'The code on the bag and `.pdf`.',
    example: 'A017.pdf',
  }),
});
const progressAnswer = { description: 'How far it is', content: jsonOf(dayProgress) };

const plan = createRoute({
  method: 'post',
  path: '/api/gardens/{garden}/day/plan',
  tags,
  summary: 'Plan every sample of a soil day; those planned already from the same figures stay as they are',
  middleware: [jsonOnly, atMost('entries')] as const,
  request: {
    params: gardenParam,
    body: {
      required: true,
      content: jsonOf(
        z
          .object({
            asOf: z.iso.date().optional().openapi({
              description: "The day planned for; that of the last time, else the garden's own, else today.",
            }),
          })
          .openapi('PlanDay'),
      ),
    },
  },
  responses: {
    202: progressAnswer,
    400: problemContent('Not JSON'),
    404: noSuch,
    413: problemContent('More than 2 MiB'),
    415: problemContent('Not sent as JSON'),
    422: wrong,
  },
});

const progress = createRoute({
  method: 'get',
  path: '/api/gardens/{garden}/day',
  tags,
  summary: 'How far the plans of a soil day are',
  request: { params: gardenParam },
  responses: { 200: progressAnswer, 404: noSuch },
});

const step = <N extends 'pause' | 'resume' | 'retry'>(name: N, summary: string) =>
  createRoute({
    method: 'post',
    path: `/api/gardens/{garden}/day/${name}`,
    tags,
    summary,
    request: { params: gardenParam },
    responses: { 200: progressAnswer, 404: noSuch },
  });
const steps = {
  pause: step('pause', 'Begin nothing new; what is under way is finished'),
  resume: step('resume', 'Go on after a pause'),
  retry: step('retry', 'Try once more what could not be planned'),
};

const file = <Q extends z.ZodObject>(name: string, type: string, summary: string, asked: Q) =>
  createRoute({
    method: 'get',
    path: `/api/gardens/{garden}/day/${name}`,
    tags,
    summary,
    request: { params: gardenParam, query: asked },
    responses: {
      200: { description: 'The file', content: { [type]: { schema: z.string().openapi({ format: 'binary' }) } } },
      404: noSuch,
      409: notYet,
      422: wrong,
    },
  });
const papers = file('handouts.pdf', 'application/pdf', 'All handouts in check-in order', handoutQuery);
const archive = file('handouts.zip', 'application/zip', 'Each handout as a file of its own', handoutQuery);
const merge = file('merge.csv', 'text/csv', 'A row for each sample, for letters and mails', query);
const summaryPaper = file('summary.pdf', 'application/pdf', 'The summary for the educator', query);
const anonymous = file('anonymous.csv', 'text/csv', 'The samples without anything that points at a person', query);

const single = createRoute({
  ...papers,
  path: '/api/gardens/{garden}/day/handouts/{file}',
  summary: 'The handout of one sample',
  request: { params: codeParam, query: handoutQuery },
});

const summary = createRoute({
  method: 'get',
  path: '/api/gardens/{garden}/day/summary',
  tags,
  summary: 'The soils of the day together, what to buy, and who to call',
  request: { params: gardenParam, query },
  responses: { 200: { description: 'The summary', content: jsonOf(daySummary) }, 404: noSuch, 409: notYet, 422: wrong },
});

const headers = (type: string, name: string) => ({
  'content-type': type,
  'cache-control': 'no-store',
  'content-disposition': `inline; filename="${name}"`,
});
const sent = (body: string | Uint8Array, type: string, name: string): Response =>
  new Response(typeof body === 'string' ? body : new Uint8Array(body), { headers: headers(type, name) });

// Loaded when something is first written.
const printer = () => import('@sorrel/print');

/** A soil day: every sample planned, and a page for each person. */
export function addDay(api: Api, room: Room): void {
  const days: Days = createDays(room);

  serve(api, plan, async (c) => json(await days.plan(c.req.valid('param').garden, c.req.valid('json').asOf), 202));
  serve(api, progress, async (c) => json(await days.progress(c.req.valid('param').garden)));
  for (const name of ['pause', 'resume', 'retry'] as const)
    serve(api, steps[name], async (c) => json(await days.step(c.req.valid('param').garden, name)));

  const origin = (asked: string) => room.publicAddress ?? new URL(asked).origin;

  serve(api, papers, async (c) => {
    const made = await days.made(c.req.valid('param').garden, c.req.valid('query'), origin(c.req.url));
    const pdf = await room.workshop.run('handouts', { list: made.handouts(), options: made.options });
    return sent(pdf, 'application/pdf', 'handouts.pdf');
  });

  serve(api, single, async (c) => {
    const { garden, file: name } = c.req.valid('param');
    const made = await days.made(garden, c.req.valid('query'), origin(c.req.url));
    const list = made
      .handouts()
      .filter(({ sampleId }) => name === `${sampleId}.pdf`)
      .slice(0, 1);
    if (list.length === 0) throw new Refusal('not-found', words.noSample(name));
    return sent(await room.workshop.run('handouts', { list, options: made.options }), 'application/pdf', name);
  });

  serve(api, archive, async (c) => {
    const made = await days.made(c.req.valid('param').garden, c.req.valid('query'), origin(c.req.url));
    const list = made.handouts();
    const width = String(list.length).length;
    const lastModified = new Date(room.now());
    async function* files() {
      for (const [index, one] of list.entries()) {
        const input = await room.workshop.run('handouts', { list: [one], options: made.options });
        yield { name: `${String(index + 1).padStart(width, '0')}-${one.sampleId}.pdf`, input, lastModified };
      }
    }
    return new Response(makeZip(files()), { headers: headers('application/zip', 'handouts.zip') });
  });

  serve(api, merge, async (c) => {
    const made = await days.made(c.req.valid('param').garden, c.req.valid('query'), origin(c.req.url));
    const { mergeTable } = await printer();
    return sent(mergeTable(made.samples, made.options), 'text/csv; charset=utf-8', 'merge.csv');
  });

  serve(api, summary, async (c) => {
    const made = await days.made(c.req.valid('param').garden, c.req.valid('query'), origin(c.req.url));
    return json(await summaryJson(made.samples, made.options));
  });

  serve(api, summaryPaper, async (c) => {
    const made = await days.made(c.req.valid('param').garden, c.req.valid('query'), origin(c.req.url));
    const work = { samples: made.samples, options: made.options };
    return sent(await room.workshop.run('daySummary', work), 'application/pdf', 'summary.pdf');
  });

  serve(api, anonymous, async (c) => {
    const made = await days.made(c.req.valid('param').garden, c.req.valid('query'), origin(c.req.url));
    const { anonymousTable } = await printer();
    return sent(anonymousTable(made.samples), 'text/csv; charset=utf-8', 'anonymous.csv');
  });
}
