import * as z from 'zod';
import * as content from './contents.ts';
import { id } from './ids.ts';

/** The day and time an entry was written, by the writer's own clock. */
const at = z.iso
  .datetime({ offset: true })
  .meta({ description: 'When the entry was written, ISO 8601.', examples: ['2026-10-03T09:30:00Z'] });

const person = z
  .string()
  .min(1)
  .max(200)
  .regex(/^[^\p{Cc}\p{Cs}]+$/u, 'holds no control characters')
  .meta({ description: 'Who wrote the entry.', examples: ['anna'] });

const head = { id, garden: id, by: person, at };
const somewhere = { place: id };
const anywhere = { place: id.optional() };

/** Every kind of entry: its word, whether it happens at a place, and what it says. */
const kinds = {
  garden: { kind: z.literal('garden'), content: content.garden },
  place: { kind: z.literal('place'), content: content.place },
  material: { kind: z.literal('material'), content: content.material },
  test: { kind: z.literal('test'), ...somewhere, content: content.test },
  reading: { kind: z.literal('reading'), ...somewhere, content: content.reading },
  application: { kind: z.literal('application'), ...somewhere, content: content.application },
  planting: { kind: z.literal('planting'), ...somewhere, content: content.planting },
  water: { kind: z.literal('water'), ...anywhere, content: content.water },
  feed: { kind: z.literal('feed'), ...anywhere, content: content.feed },
  observation: { kind: z.literal('observation'), ...anywhere, content: content.observation },
  task: { kind: z.literal('task'), ...anywhere, content: content.task },
  quality: { kind: z.literal('quality'), ...anywhere, content: content.quality },
};

type Shape = Readonly<Record<string, z.ZodType>>;
const added = <S extends Shape>(shape: S) => z.strictObject({ ...head, action: z.literal('add'), ...shape });

const seen = id.optional().meta({
  description: 'The entry that the writer was looking at. When it is no longer the newest, this one is refused.',
});
const about = { thing: id.meta({ description: 'Id of the entry that first added the thing.' }), seen };
const corrected = <S extends Shape>(shape: S) =>
  z.strictObject({ ...head, action: z.literal('correct'), ...about, ...shape });

export const variants = {
  add: {
    garden: added(kinds.garden),
    place: added(kinds.place),
    material: added(kinds.material),
    test: added(kinds.test),
    reading: added(kinds.reading),
    application: added(kinds.application),
    planting: added(kinds.planting),
    water: added(kinds.water),
    feed: added(kinds.feed),
    observation: added(kinds.observation),
    task: added(kinds.task),
    quality: added(kinds.quality),
  },
  correct: {
    garden: corrected(kinds.garden),
    place: corrected(kinds.place),
    material: corrected(kinds.material),
    test: corrected(kinds.test),
    reading: corrected(kinds.reading),
    application: corrected(kinds.application),
    planting: corrected(kinds.planting),
    water: corrected(kinds.water),
    feed: corrected(kinds.feed),
    observation: corrected(kinds.observation),
    task: corrected(kinds.task),
    quality: corrected(kinds.quality),
  },
  remove: z.strictObject({
    ...head,
    action: z.literal('remove'),
    ...about,
    why: z.string().max(1000).optional(),
  }),
  undo: z.strictObject({
    ...head,
    action: z.literal('undo'),
    entry: id.meta({ description: 'Id of the entry that is taken back.' }),
  }),
} as const;

const a = variants.add;
const c = variants.correct;
const add = z.discriminatedUnion('kind', [
  a.garden,
  a.place,
  a.material,
  a.test,
  a.reading,
  a.application,
  a.planting,
  a.water,
  a.feed,
  a.observation,
  a.task,
  a.quality,
]);
const correct = z.discriminatedUnion('kind', [
  c.garden,
  c.place,
  c.material,
  c.test,
  c.reading,
  c.application,
  c.planting,
  c.water,
  c.feed,
  c.observation,
  c.task,
  c.quality,
]);

/**
 * One entry of the record. `add` brings a new thing, and its id is the thing's id from then on; `correct` says all of
 * it anew; `remove` ends it; `undo` takes back an earlier entry of the same person, an undo included.
 * The id of a garden is the id of the entry that adds it.
 */
export const entry = z.discriminatedUnion('action', [add, correct, variants.remove, variants.undo]);

export type AddEntry = z.output<typeof add>;
export type CorrectEntry = z.output<typeof correct>;
export type RemoveEntry = z.output<typeof variants.remove>;
export type UndoEntry = z.output<typeof variants.undo>;
export type Entry = AddEntry | CorrectEntry | RemoveEntry | UndoEntry;
export type Kind = AddEntry['kind'];
export type Content<K extends Kind> = Extract<AddEntry, { kind: K }>['content'];

export const allKinds = Object.keys(kinds) as readonly Kind[];
export const actions = ['add', 'correct', 'remove', 'undo'] as const;
