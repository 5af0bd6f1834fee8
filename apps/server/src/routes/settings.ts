import { createRoute } from '@hono/zod-openapi';
import { newId, thingsOfKind } from '@sorrel/store';
import { type Api, json, serve } from '../http/api.ts';
import { atMost, jsonOnly } from '../http/body.ts';
import { problemContent, Refusal } from '../http/problem-details.ts';
import { orRefuse } from '../http/store-refusals.ts';
import type { Room } from '../room.ts';
import { newSettings, settings } from '../schemas/gardens.ts';
import { gardenParam, receipt } from '../schemas/shared.ts';
import { words } from '../words.ts';
import { writtenAt } from '../written-at.ts';

const jsonOf = <S>(schema: S) => ({ 'application/json': { schema } });

const read = createRoute({
  method: 'get',
  path: '/api/gardens/{garden}/settings',
  tags: ['settings'],
  summary: 'Name, units, region, climate, risk and so on of a garden',
  request: { params: gardenParam },
  responses: {
    200: { description: 'The settings', content: jsonOf(settings) },
    404: problemContent('No such garden'),
  },
});

const write = createRoute({
  method: 'put',
  path: '/api/gardens/{garden}/settings',
  tags: ['settings'],
  summary: 'Change them, as a correction in the record',
  middleware: [jsonOnly, atMost('entries')] as const,
  request: { params: gardenParam, body: { required: true, content: jsonOf(newSettings) } },
  responses: {
    200: { description: 'The entry that says so', content: jsonOf(receipt) },
    400: problemContent('Not JSON'),
    404: problemContent('No such garden'),
    409: problemContent('Somebody changed them meanwhile'),
    413: problemContent('More than 2 MiB'),
    415: problemContent('Not sent as JSON'),
    422: problemContent('A setting could not be used'),
  },
});

/** Settings of a garden: the head of its document. */
export function addSettings(api: Api, room: Room): void {
  const { store, now } = room;
  serve(api, read, async (c) => {
    const { garden } = c.req.valid('param');
    const standing = thingsOfKind(orRefuse(await store.things(garden)), 'garden')[0];
    if (standing === undefined) throw new Refusal('not-found', words.noGarden(garden));
    const { latest, by, at, content } = standing;
    return json({ latest, by, at, settings: content });
  });

  serve(api, write, async (c) => {
    const { garden } = c.req.valid('param');
    const sent = c.req.valid('json');
    if (thingsOfKind(orRefuse(await store.things(garden)), 'garden').length === 0)
      throw new Refusal('not-found', words.noGarden(garden));
    const entry = {
      id: sent.id ?? newId(now()),
      garden,
      by: sent.by,
      at: await writtenAt(room, garden, sent.id, sent.at),
      action: 'correct',
      thing: garden,
      kind: 'garden',
      content: sent.settings,
      ...(sent.seen === undefined ? {} : { seen: sent.seen }),
    };
    return json(orRefuse(await store.append([entry]))[0]);
  });
}
