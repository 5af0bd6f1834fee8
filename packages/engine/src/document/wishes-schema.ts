import * as z from 'zod';
import * as kind from './kinds.ts';
import { ownRange } from './schema.ts';

const plant = z.union([kind.name, ownRange]);
const seasons = z.array(z.int().min(1).max(3)).min(1);
const light = z.enum(['sun', 'part shade', 'shade']);

export const wish = z
  .strictObject({
    plant,
    area: kind.area,
    seasons: seasons.optional(),
    stays: kind.yesNo.optional(),
    light: light.optional(),
    pots: z.enum(['only', 'never']).optional(),
  })
  .meta({ description: 'A plant somebody wants, and the area of it in each of its seasons.' });

export const placeRules = z
  .strictObject({
    place: kind.name,
    light: light.optional(),
    stays: z.array(z.strictObject({ plant, area: kind.area.optional() })).optional(),
    fixed: z.array(z.strictObject({ plant, area: kind.area.optional(), seasons: seasons.optional() })).optional(),
    history: z.array(z.strictObject({ grew: kind.name, yearsAgo: z.int().min(1).max(30) })).optional(),
  })
  .meta({
    description: 'What is settled about a place: its light, what stays, what must grow there, what grew there.',
  });

/** The wishes for a garden: a small document beside the garden document. */
export const wishesDocument = z
  .strictObject({
    seasons: z.int().min(1).max(3).optional(),
    wishes: z.array(wish),
    places: z.array(placeRules).optional(),
  })
  .meta({ title: 'Wishes', description: 'What is to grow in a garden in the next one to three seasons.' });
