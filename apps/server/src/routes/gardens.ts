import { createRoute, z } from '@hono/zod-openapi';
import { readGarden } from '@sorrel/engine/document';
import { entriesFromDocument, newId } from '@sorrel/store';
import { type Api, json, serve, serveUnchecked } from '../http/api.ts';
import { holds } from '../http/asset.ts';
import { atMost, jsonOnly } from '../http/body.ts';
import { problemContent, Refusal } from '../http/problem-details.ts';
import { orRefuse } from '../http/store-refusals.ts';
import { createRendered, type Rendered } from '../rendered.ts';
import { type Room, todayOf } from '../room.ts';
import { garden, gardenLine, gardenList, imported, newGarden, place } from '../schemas/gardens.ts';
import { by, documentRef, gardenParam, id, placeParam, receipt } from '../schemas/shared.ts';
import { isInvented } from '../seed.ts';
import { words } from '../words.ts';
import { writtenAt } from '../written-at.ts';

const tags = ['gardens'];
const jsonOf = <S>(schema: S) => ({ 'application/json': { schema } });
const held = { description: 'Unchanged since the ETag that was sent' };
const noSuch = problemContent('No such garden or place');

const list = createRoute({
  method: 'get',
  path: '/api/gardens',
  tags,
  summary: 'All gardens, by name',
  responses: { 200: { description: 'The gardens', content: jsonOf(gardenList) } },
});

const create = createRoute({
  method: 'post',
  path: '/api/gardens',
  tags,
  summary: 'Start a garden from a garden document',
  middleware: [jsonOnly, atMost('entries')] as const,
  request: { body: { required: true, content: jsonOf(newGarden) } },
  responses: {
    200: { description: 'A garden with this id was there already; nothing was done', content: jsonOf(gardenLine) },
    201: { description: 'The new garden', content: jsonOf(gardenLine) },
    400: problemContent('Not JSON'),
    413: problemContent('Too large'),
    415: problemContent('Not sent as JSON'),
    422: problemContent('The document has wrong entries; nothing was stored'),
  },
});

const read = createRoute({
  method: 'get',
  path: '/api/gardens/{garden}',
  tags,
  summary: 'A garden as a garden document',
  request: { params: gardenParam },
  responses: { 200: { description: 'The garden', content: jsonOf(garden) }, 304: held, 404: noSuch },
});

const readPlace = createRoute({
  method: 'get',
  path: '/api/gardens/{garden}/places/{place}',
  tags,
  summary: 'One place of a garden',
  request: { params: placeParam },
  responses: { 200: { description: 'The place', content: jsonOf(place) }, 304: held, 404: noSuch },
});

const remove = createRoute({
  method: 'delete',
  path: '/api/gardens/{garden}',
  tags,
  summary: 'Remove a garden; the record keeps everything, and an undo brings it back',
  request: {
    params: gardenParam,
    query: z.object({ by, id: id.optional() }),
  },
  responses: {
    200: { description: 'The entry that says so', content: jsonOf(receipt) },
    404: noSuch,
    409: problemContent('The id of the entry is taken'),
    422: problemContent('Who removes it is missing'),
  },
});

const writeOut = createRoute({
  method: 'get',
  path: '/api/gardens/{garden}/export',
  tags,
  summary: 'The whole record of a garden with its photos, as one file',
  request: { params: gardenParam },
  responses: { 200: { description: 'The file', content: jsonOf(documentRef.openapi('GardenExport')) }, 404: noSuch },
});

const readIn = createRoute({
  method: 'post',
  path: '/api/import',
  tags,
  summary: 'Read in such a file; reading it twice is harmless',
  middleware: [jsonOnly, atMost('import')] as const,
  request: { body: { required: true, content: jsonOf(documentRef.openapi('GardenExport')) } },
  responses: {
    200: { description: 'What was new', content: jsonOf(imported) },
    409: problemContent('An entry with one of the ids says something else'),
    413: problemContent('Too large'),
    415: problemContent('Not sent as JSON'),
    422: problemContent('Not such a file'),
  },
});

function answer({ etag, body }: Rendered, asked: string | undefined): Response {
  const headers = { etag, 'cache-control': 'no-cache' };
  return holds(asked, etag)
    ? new Response(null, { status: 304, headers })
    : new Response(body, { headers: { ...headers, 'content-type': 'application/json; charset=utf-8' } });
}

/** Gardens: list, start, read, remove, write out and read in. */
export function addGardens(api: Api, room: Room): void {
  const { store, now } = room;
  const rendered = createRendered(store);

  serve(api, list, async () => {
    const gardens = orRefuse(await store.gardens()).map((line) => ({ ...line, invented: isInvented(line.id) }));
    return json({ gardens });
  });

  serve(api, create, async (c) => {
    const sent = c.req.valid('json');
    const ids = sent.id === undefined ? [] : [sent.id];
    if (sent.id !== undefined && orRefuse(await store.version(sent.id)) > 0) return json(await lineOf(room, sent.id));
    // What the schema alone cannot see, such as a target upside down, is found before anything is stored.
    const read = readGarden(sent.document, { today: todayOf(room) });
    // A garden may start without a bed; they are added one by one.
    const problems = read.problems.filter(({ code }) => code !== 'document.no-places');
    if (problems.length > 0) throw new Refusal('bad-entry', words.badRequest, problems);
    const entries = orRefuse(
      entriesFromDocument(sent.document, {
        by: sent.by,
        at: new Date(now()).toISOString(),
        newId: () => ids.pop() ?? newId(now()),
      }),
    );
    const [first] = orRefuse(await store.append(entries));
    if (first === undefined) throw new Refusal('bad-entry', words.badRequest);
    return json(await lineOf(room, first.garden), 201, { location: `/api/gardens/${first.garden}` });
  });

  serve(api, read, async (c) =>
    answer(orRefuse(await rendered(c.req.valid('param').garden)), c.req.header('if-none-match')),
  );

  serveUnchecked(api, readPlace, async (c) => {
    const place = c.req.param('place') ?? '';
    const found = orRefuse(await rendered(c.req.param('garden') ?? '')).places.get(place);
    if (found === undefined) throw new Refusal('not-found', words.noPlace(place));
    return answer(found, c.req.header('if-none-match'));
  });

  serve(api, remove, async (c) => {
    const asked = c.req.valid('param').garden;
    const query = c.req.valid('query');
    const at = await writtenAt(room, asked, query.id);
    const entry = { id: query.id ?? newId(now()), garden: asked, by: query.by, at, action: 'remove', thing: asked };
    return json(orRefuse(await store.append([entry]))[0]);
  });

  serve(api, writeOut, async (c) => {
    const asked = c.req.valid('param').garden;
    return new Response(orRefuse(await store.exportGarden(asked)), {
      headers: {
        'content-type': 'application/json; charset=utf-8',
        'content-disposition': `attachment; filename="garden-${todayOf(room)}.json"`,
        'cache-control': 'no-store',
      },
    });
  });

  serve(api, readIn, async (c) => json(orRefuse(await store.importGarden(await c.req.text()))));
}

async function lineOf({ store }: Room, garden: string) {
  const { document } = orRefuse(await store.assemble(garden));
  const version = orRefuse(await store.version(garden));
  return { id: garden, name: document.garden, places: document.places.length, version, invented: isInvented(garden) };
}
