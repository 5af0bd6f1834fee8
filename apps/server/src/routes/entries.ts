import { createRoute } from '@hono/zod-openapi';
import { fail, type Problem } from '@sorrel/engine/derivation';
import { checkEntry, type Receipt } from '@sorrel/store';
import { type Api, json, serve } from '../http/api.ts';
import { atMost, jsonOnly } from '../http/body.ts';
import { problemContent, Refusal } from '../http/problem-details.ts';
import { kindOf, orRefuse, refusalOf } from '../http/store-refusals.ts';
import type { Room } from '../room.ts';
import {
  batch,
  batchAnswer,
  entryPage,
  history,
  type outcomes,
  since,
  undone,
  undoRequest,
} from '../schemas/entries.ts';
import { gardenParam, id } from '../schemas/shared.ts';
import { words } from '../words.ts';
import { writtenAt } from '../written-at.ts';

const tags = ['entries'];
const jsonOf = <S>(schema: S) => ({ 'application/json': { schema } });
const noSuch = problemContent('No such garden');
const bodyRefusals = {
  400: problemContent('Not JSON'),
  413: problemContent('Too large'),
  415: problemContent('Not sent as JSON'),
  422: problemContent('An entry could not be used'),
};

const append = createRoute({
  method: 'post',
  path: '/api/gardens/{garden}/entries',
  tags,
  summary: 'Write entries; the first entry of a garden starts it',
  middleware: [jsonOnly, atMost('entries')] as const,
  request: { params: gardenParam, body: { required: true, content: jsonOf(batch) } },
  responses: {
    200: { description: 'What became of each entry', content: jsonOf(batchAnswer) },
    404: noSuch,
    409: problemContent('One id says something else already, or what was changed has been changed meanwhile'),
    ...bodyRefusals,
  },
});

const read = createRoute({
  method: 'get',
  path: '/api/gardens/{garden}/entries',
  tags,
  summary: 'The record of a garden, or what is new in it',
  request: { params: gardenParam, query: since },
  responses: {
    200: { description: 'Entries in the order of arrival', content: jsonOf(entryPage) },
    404: noSuch,
    422: problemContent('A number could not be used'),
  },
});

const undo = createRoute({
  method: 'post',
  path: '/api/gardens/{garden}/undo',
  tags,
  summary: 'Take back the last entry of a person that still counts',
  middleware: [jsonOnly, atMost('entries')] as const,
  request: { params: gardenParam, body: { required: true, content: jsonOf(undoRequest) } },
  responses: {
    200: { description: 'What was taken back', content: jsonOf(undone) },
    404: noSuch,
    409: problemContent('Nothing is left to take back'),
    ...bodyRefusals,
  },
});

const readHistory = createRoute({
  method: 'get',
  path: '/api/gardens/{garden}/things/{thing}/history',
  tags,
  summary: 'Every entry about one thing: its first, corrections, removals, and what took them back',
  request: { params: gardenParam.extend({ thing: id.openapi({ param: { name: 'thing', in: 'path' } }) }) },
  responses: { 200: { description: 'Entries in the order of arrival', content: jsonOf(history) }, 404: noSuch },
});

type Outcome = {
  readonly id?: string;
  readonly outcome: (typeof outcomes)[number];
  readonly number?: number;
  readonly problems?: readonly Problem[];
};

/** The record: write, read since a number, take back. */
export function addEntries(api: Api, room: Room): void {
  const { store } = room;
  serve(api, append, async (c) => {
    const { garden } = c.req.valid('param');
    const { entries, together } = c.req.valid('json');
    const results = together === false ? await eachForItself(garden, entries) : await allOrNone(garden, entries);
    return json({ version: orRefuse(await store.version(garden)), results });
  });

  async function allOrNone(garden: string, entries: readonly unknown[]): Promise<Outcome[]> {
    const wrong = entries.flatMap((entry, index) =>
      faultsOf(garden, entry).map((each) => ({ ...each, field: `entries[${index}].${each.field}` })),
    );
    if (wrong.length > 0) throw new Refusal('bad-entry', words.badRequest, wrong);
    return orRefuse(await store.append(entries)).map(stored);
  }

  async function eachForItself(garden: string, entries: readonly unknown[]): Promise<Outcome[]> {
    const results: Outcome[] = [];
    for (const [index, entry] of entries.entries()) {
      const faults = faultsOf(garden, entry);
      const result = faults.length > 0 ? fail(...faults) : await store.append([entry]);
      const receipt = result.ok ? result.value[0] : undefined;
      if (receipt !== undefined) {
        results.push(stored(receipt));
        continue;
      }
      const problems = result.ok ? [] : result.problems;
      if (kindOf(problems) !== 'no-database') {
        results.push({ ...named(entry), outcome: 'refused', problems });
        continue;
      }
      // What comes later may rest on this one, so the order is kept and nothing more is tried.
      if (index === 0) throw refusalOf(problems);
      for (const later of entries.slice(index)) results.push({ ...named(later), outcome: 'try-again', problems });
      break;
    }
    return results;
  }

  serve(api, read, async (c) => {
    const { garden } = c.req.valid('param');
    const { since: after = 0, limit = 1000 } = c.req.valid('query');
    const all = orRefuse(await store.entries(garden, after));
    const version = all.at(-1)?.number ?? orRefuse(await store.version(garden));
    return json({ version, entries: all.slice(0, limit), more: all.length > limit });
  });

  serve(api, undo, async (c) => {
    const { garden } = c.req.valid('param');
    const { id: entry, by, at } = c.req.valid('json');
    return json(orRefuse(await store.undo({ id: entry, garden, by, at: await writtenAt(room, garden, entry, at) })));
  });

  serve(api, readHistory, async (c) => {
    const { garden, thing } = c.req.valid('param');
    const entries = orRefuse(await store.history(garden, thing));
    if (entries.length === 0) throw new Refusal('not-found', words.noThing(thing));
    return json({ entries });
  });
}

const stored = ({ id: entry, number, fresh }: Receipt): Outcome => ({
  id: entry,
  outcome: fresh ? 'stored' : 'known',
  number,
});

/** What is wrong with an entry by itself. */
function faultsOf(garden: string, typed: unknown): readonly Problem[] {
  const checked = checkEntry(typed);
  if (!checked.ok) return checked.problems;
  if (checked.value.garden === garden) return [];
  const value = checked.value.garden;
  return [
    {
      code: 'server.other-garden',
      field: 'garden',
      value,
      message: words.otherGarden,
      fix: words.otherGardenFix(garden),
    },
  ];
}

function named(typed: unknown): { id?: string } {
  const given = (typed as { id?: unknown } | null)?.id;
  return typeof given === 'string' ? { id: given.slice(0, 100) } : {};
}
