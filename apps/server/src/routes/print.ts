import { createRoute, z } from '@hono/zod-openapi';
import type { Arrangement } from '@sorrel/engine/placing';
import type { Place } from '@sorrel/engine/plan';
import type { PrintOptions } from '@sorrel/print';
import { type Api, json, serve } from '../http/api.ts';
import { atMost, jsonOnly } from '../http/body.ts';
import { problemContent, Refusal } from '../http/problem-details.ts';
import { orRefuse } from '../http/store-refusals.ts';
import type { Planner } from '../planned.ts';
import { type Room, todayOf } from '../room.ts';
import { arrangement } from '../schemas/arrangement.ts';
import { gardenParam, id } from '../schemas/shared.ts';
import { calendarToken, isCalendarToken } from '../secret.ts';
import { words } from '../words.ts';
import { planQuery } from './plan.ts';

export const tags = ['print'];
export const query = planQuery.extend({ paper: z.enum(['a4', 'us-letter']).optional() });
export const yes = z.enum(['yes', 'no']).optional();
const refusals = {
  404: problemContent('No such garden or place'),
  422: problemContent('The question has wrong entries'),
};
export const file = (type: string, description: string) => ({
  200: { description, content: { [type]: { schema: z.string().openapi({ format: 'binary' }) } } },
  ...refusals,
});

const pages = createRoute({
  method: 'get',
  path: '/api/gardens/{garden}/print/work-sheet.pdf',
  tags,
  summary: 'The work sheet of a garden, to take outside',
  request: { params: gardenParam, query },
  responses: file('application/pdf', 'The work sheet'),
});

const papers = createRoute({
  method: 'get',
  path: '/api/gardens/{garden}/print/handouts.pdf',
  tags,
  summary: 'A handout for each place, or for one',
  request: {
    params: gardenParam,
    query: query.extend({
      place: id.optional().openapi({ description: 'Only this place.' }),
      largePrint: yes,
      everyStep: yes.openapi({ description: 'yes: with every step of the working.' }),
      contact: z.string().max(200).optional().openapi({ description: 'Name and telephone of who hands it out.' }),
    }),
  },
  responses: file('application/pdf', 'The handouts'),
});

const signs = createRoute({
  method: 'get',
  path: '/api/gardens/{garden}/print/labels.pdf',
  tags,
  summary: 'Labels for beds, with a QR code that leads to the place',
  request: {
    params: gardenParam,
    query: query.extend({ place: id.optional().openapi({ description: 'Only this place.' }) }),
  },
  responses: file('application/pdf', 'The labels'),
});

const arranged = createRoute({
  method: 'post',
  path: '/api/gardens/{garden}/print/arrangement.pdf',
  tags,
  summary: 'What to grow where, as the page worked it out, on paper',
  middleware: [jsonOnly, atMost('entries')] as const,
  request: {
    params: gardenParam,
    query,
    body: { required: true, content: { 'application/json': { schema: z.strictObject({ arrangement }) } } },
  },
  responses: {
    ...file('application/pdf', 'The arrangement'),
    400: problemContent('Not JSON'),
    413: problemContent('More than 2 MiB'),
    415: problemContent('Not sent as JSON'),
  },
});

const rows = <N extends 'applications' | 'shopping'>(name: N, summary: string) =>
  createRoute({
    method: 'get',
    path: `/api/gardens/{garden}/print/${name}.csv`,
    tags,
    summary,
    request: { params: gardenParam, query: planQuery },
    responses: file('text/csv', 'The table (RFC 4180)'),
  });
const tables = {
  applications: rows('applications', 'The plan as a table for a spreadsheet: a row for each application'),
  shopping: rows('shopping', 'What to buy, as a table for a spreadsheet'),
};

const feedAddress = createRoute({
  method: 'get',
  path: '/api/gardens/{garden}/calendar',
  tags,
  summary: 'Where the calendar of a garden is: an address that cannot be guessed, for a calendar program',
  request: { params: gardenParam },
  responses: {
    200: {
      description: 'Its path',
      content: { 'application/json': { schema: z.object({ path: z.string() }).openapi('CalendarAddress') } },
    },
    404: refusals[404],
  },
});

const feed = createRoute({
  method: 'get',
  path: '/calendar/{garden}/{file}',
  tags,
  summary: 'The calendar of a garden, for whoever was told the address',
  request: {
    params: gardenParam.extend({ file: z.string().openapi({ param: { name: 'file', in: 'path' } }) }),
    query: planQuery,
  },
  responses: file('text/calendar', 'The calendar (RFC 5545)'),
});

export const sent = (body: string | Uint8Array, type: string, name: string): Response =>
  new Response(typeof body === 'string' ? body : new Uint8Array(body), {
    headers: { 'content-type': type, 'cache-control': 'no-store', 'content-disposition': `inline; filename="${name}"` },
  });

// Loaded when something is first written.
const printer = () => import('@sorrel/print');

/** Paper, tables and the calendar. */
export function addPrint(api: Api, room: Room, planner: Planner): void {
  const { workshop } = room;
  const optionsOf = (system: PrintOptions['system'], paper: PrintOptions['paper']): PrintOptions => ({
    system,
    printed: todayOf(room),
    ...(paper === undefined ? {} : { paper }),
  });
  /** Address of a garden's screens, at the server's own name or the one it was asked by. */
  const baseOf = (garden: string, asked: string) => `${room.publicAddress ?? new URL(asked).origin}/g/${garden}`;

  serve(api, pages, async (c) => {
    const { paper, ...asked } = c.req.valid('query');
    const { read, plan, units } = await planner.plan(c.req.valid('param').garden, asked);
    const work = { garden: read.garden, plan, options: optionsOf(units, paper) };
    return sent(await workshop.run('workSheet', work), 'application/pdf', 'work-sheet.pdf');
  });

  serve(api, papers, async (c) => {
    const { paper, place: only, largePrint, everyStep, contact, ...asked } = c.req.valid('query');
    const { read, plan, units } = await planner.plan(c.req.valid('param').garden, asked);
    const list = read.garden.places.flatMap((place, index) => {
      const recommendation = plan.recommendations[index];
      if (recommendation === undefined || (only !== undefined && place.id !== only)) return [];
      return [{ place, recommendation, garden: read.garden.name, ...(contact === undefined ? {} : { contact }) }];
    });
    if (only !== undefined && list.length === 0) throw new Refusal('not-found', words.noPlace(only));
    const options = {
      ...optionsOf(units, paper),
      largePrint: largePrint === 'yes',
      everyStep: everyStep === 'yes',
      planned: read.garden.settings.today,
    };
    return sent(await workshop.run('handouts', { list, options }), 'application/pdf', 'handouts.pdf');
  });

  serve(api, signs, async (c) => {
    const { garden } = c.req.valid('param');
    const { paper, place: only, ...asked } = c.req.valid('query');
    const { read, units } = await planner.read(garden, asked);
    const places = only === undefined ? read.garden.places : read.garden.places.filter(({ id }) => id === only);
    if (only !== undefined && places.length === 0) throw new Refusal('not-found', words.noPlace(only));
    const work = { places, options: optionsOf(units, paper), base: baseOf(garden, c.req.url) };
    return sent(await workshop.run('labels', work), 'application/pdf', 'labels.pdf');
  });

  serve(api, arranged, async (c) => {
    const { paper, ...asked } = c.req.valid('query');
    const { read, units } = await planner.read(c.req.valid('param').garden, asked);
    const { name, currencySymbol, settings } = read.garden;
    const options = { ...optionsOf(units, paper), garden: name, currencySymbol, planned: settings.today };
    // Its schema holds all that is printed.
    const told = c.req.valid('json').arrangement as unknown as Arrangement;
    return sent(
      await workshop.run('arrangement', { arrangement: told, options }),
      'application/pdf',
      'arrangement.pdf',
    );
  });

  for (const of of ['applications', 'shopping'] as const)
    serve(api, tables[of], async (c) => {
      const { read, plan, units } = await planner.plan(c.req.valid('param').garden, c.req.valid('query'));
      const { table } = await printer();
      return sent(table(read.garden, plan, { system: units, of }), 'text/csv; charset=utf-8', `${of}.csv`);
    });

  serve(api, feedAddress, async (c) => {
    const { garden } = c.req.valid('param');
    orRefuse(await room.store.assemble(garden));
    return json({ path: `/calendar/${garden}/${calendarToken(room.secret, garden)}.ics` });
  });

  serve(api, feed, async (c) => {
    const { garden, file: name } = c.req.valid('param');
    if (!name.endsWith('.ics') || !isCalendarToken(room.secret, garden, name.slice(0, -'.ics'.length)))
      throw new Refusal('not-found', words.noCalendar);
    const { read, plan, units } = await planner.plan(garden, c.req.valid('query'));
    const { calendar } = await printer();
    const text = calendar(read.garden, plan, {
      ...optionsOf(units, undefined),
      stamp: new Date(room.now()).toISOString(),
      gardenId: garden,
      url: ({ id }: Place) => `${baseOf(garden, c.req.url)}/place/${id}`,
    });
    return sent(text, 'text/calendar; charset=utf-8', 'garden.ics');
  });
}
