import { createRoute, z } from '@hono/zod-openapi';
import { findAnyPlant } from '@sorrel/almanac/half-known-plants';
import { plannedNutrients, QUESTIONS } from '@sorrel/engine/nutrients';
import type { PageOptions } from '@sorrel/print';
import { type Api, serve } from '../http/api.ts';
import { Refusal } from '../http/problem-details.ts';
import type { Planner } from '../planned.ts';
import { type Room, todayOf } from '../room.ts';
import { gardenParam, id } from '../schemas/shared.ts';
import { words } from '../words.ts';
import { file, query, sent, tags, yes } from './print.ts';

const usable = createRoute({
  method: 'get',
  path: '/api/gardens/{garden}/print/usable.pdf',
  tags,
  summary: 'What the plants of each place, or of one, can use: what is enough, locked, short or too much',
  request: {
    params: gardenParam,
    query: query.extend({ place: id.optional().openapi({ description: 'Only this place.' }), largePrint: yes }),
  },
  responses: file('application/pdf', 'Pages for each place'),
});

const plant = createRoute({
  method: 'get',
  path: '/api/gardens/{garden}/print/plant.pdf',
  tags,
  summary: 'A page for one plant: the pH it wants and which places of the garden suit it',
  request: {
    params: gardenParam,
    query: query.extend({
      plant: z.string().min(1).max(200).openapi({ description: 'Its key or any of its names.', example: 'cabbage' }),
      largePrint: yes,
    }),
  },
  responses: file('application/pdf', 'The page'),
});

const answer = <const A extends readonly [string, ...string[]]>(answers: A) => z.enum(answers).optional();

const symptoms = createRoute({
  method: 'get',
  path: '/api/gardens/{garden}/print/symptoms.pdf',
  tags,
  summary: 'What was seen on a sick plant of a place, what it may be, and what to look at next',
  request: {
    params: gardenParam,
    query: query.extend({
      place: id,
      seen: z.iso.date().optional().openapi({ description: 'The day it was seen.' }),
      plant: z.string().max(200).optional(),
      weeds: z.string().max(2000).optional().openapi({ description: 'Names of weeds, with commas between.' }),
      note: z.string().max(500).optional(),
      leaves: answer(QUESTIONS.leaves),
      pattern: answer(QUESTIONS.pattern),
      spots: answer(QUESTIONS.spots),
      growth: answer(QUESTIONS.growth),
      roots: answer(QUESTIONS.roots),
      fruit: answer(QUESTIONS.fruit),
      recent: answer(QUESTIONS.recent),
      largePrint: yes,
    }),
  },
  responses: file('application/pdf', 'The page'),
});

/** Papers about plants: one plant, what a place's plants can use, what was seen on a sick one. */
export function addPrintPlants(api: Api, room: Room, planner: Planner): void {
  const optionsOf = (
    system: PageOptions['system'],
    { paper, largePrint }: { paper?: PageOptions['paper']; largePrint?: 'yes' | 'no' | undefined },
  ): PageOptions => ({
    system,
    printed: todayOf(room),
    largePrint: largePrint === 'yes',
    ...(paper === undefined ? {} : { paper }),
  });

  serve(api, usable, async (c) => {
    const { place: only, asOf, units: wanted, ...look } = c.req.valid('query');
    const { read, plan, units } = await planner.plan(c.req.valid('param').garden, { asOf, units: wanted });
    const list = read.garden.places.flatMap((place, index) => {
      const recommendation = plan.recommendations[index];
      if (recommendation === undefined || (only !== undefined && place.id !== only)) return [];
      return [{ place, recommendation }];
    });
    if (only !== undefined && list.length === 0) throw new Refusal('not-found', words.noPlace(only));
    const work = { list, options: optionsOf(units, look) };
    return sent(await room.workshop.run('usable', work), 'application/pdf', 'usable.pdf');
  });

  serve(api, plant, async (c) => {
    const { plant: name, asOf, units: wanted, ...look } = c.req.valid('query');
    const row = findAnyPlant(name);
    if (row === undefined) throw new Refusal('not-found', words.noPlant(name));
    const { read, plan, units } = await planner.plan(c.req.valid('param').garden, { asOf, units: wanted });
    const work = { plant: row, garden: read.garden, plan, options: optionsOf(units, look) };
    return sent(await room.workshop.run('plant', work), 'application/pdf', 'plant.pdf');
  });

  serve(api, symptoms, async (c) => {
    const {
      place: where,
      seen,
      plant: crop,
      weeds,
      note,
      asOf,
      units: wanted,
      paper,
      largePrint,
      ...answers
    } = c.req.valid('query');
    const { read, plan, units } = await planner.plan(c.req.valid('param').garden, { asOf, units: wanted });
    const index = read.garden.places.findIndex((each) => each.id === where);
    const [place, advice] = [read.garden.places[index], plan.recommendations[index]];
    if (place === undefined || advice === undefined) throw new Refusal('not-found', words.noPlace(where));
    const found = plannedNutrients(place, advice);
    const page = {
      answers,
      evidence: {
        medium: place.medium,
        ...(crop === undefined ? {} : { crop }),
        ...(found === undefined ? {} : { ph: found.today, verdicts: found.verdicts }),
      },
      place: place.name,
      ...(crop === undefined ? {} : { plant: crop }),
      ...(seen === undefined ? {} : { date: seen }),
      ...(weeds === undefined ? {} : { weeds: weeds.split(',') }),
      ...(note === undefined ? {} : { note }),
    };
    const work = { seen: page, options: optionsOf(units, { paper, largePrint }) };
    return sent(await room.workshop.run('symptoms', work), 'application/pdf', 'symptoms.pdf');
  });
}
