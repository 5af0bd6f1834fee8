import { gardenDocument } from '@sorrel/engine/document';
import { QUESTIONS, type Question } from '@sorrel/engine/nutrients';
import * as z from 'zod';

/**
 * What an entry of each kind says. Wherever the garden document has the word, it is taken from there, so that a stored
 * garden can be written out as a garden document; quantities stay as they were typed.
 */
const { places, materials, ...head } = gardenDocument.shape;
const { tests, applications, ...placeHead } = places.element.shape;
const testEntry = tests.unwrap().element;
const applicationEntry = applications.unwrap().element;
const { date, depth, cores, ph, fizz, conductivity, note } = testEntry.shape;
const { amount } = applicationEntry.shape;
const name = applicationEntry.shape.material;
const plant = placeHead.plants.unwrap().element;
const waterShape = placeHead.water.unwrap().shape;

export const garden = z.strictObject(head);
export const place = z.strictObject(placeHead);
export const material = materials.unwrap().element;
/** A soil test as its report prints it, or a kit. */
export const test = testEntry;
/** A pH that the gardener read herself, with what shows how far the meter can be trusted. */
export const reading = z.strictObject({
  date,
  by: testEntry.shape.by.exclude(['laboratory']),
  depth,
  cores,
  ph: ph.unwrap(),
  fizz,
  conductivity,
  slurries: z
    .array(ph.unwrap().shape.value)
    .min(1)
    .max(50)
    .optional()
    .meta({ description: 'The pH of each cup of soil and water, when several were read.' }),
  meter: name.optional().meta({ description: 'Which meter, where there are several.' }),
  meterCheck: z
    .array(z.strictObject({ buffer: ph.unwrap().shape.value, shown: ph.unwrap().shape.value }))
    .min(1)
    .max(10)
    .optional()
    .meta({ description: 'What the meter showed in buffer solutions of known pH.' }),
  note,
});
export const application = applicationEntry;
export const planting = z.strictObject({
  date,
  plant,
  lifted: date.optional().meta({ description: 'The day on which the plants came out, once they have.' }),
  note,
});
/** What she waters with. Without a place it holds for every place that has no water of its own. */
export const water = z.strictObject({ date, ...waterShape, note });
/** Fertilizer given to plants, which sours or sweetens in its own way. */
export const feed = z.strictObject({ date, material: name, amount, until: date.optional(), note });
/** The answers of the symptom key; a question that nobody could answer is left out. */
const answers = z.strictObject({
  leaves: z.enum(QUESTIONS.leaves).optional(),
  pattern: z.enum(QUESTIONS.pattern).optional(),
  spots: z.enum(QUESTIONS.spots).optional(),
  growth: z.enum(QUESTIONS.growth).optional(),
  roots: z.enum(QUESTIONS.roots).optional(),
  fruit: z.enum(QUESTIONS.fruit).optional(),
  recent: z.enum(QUESTIONS.recent).optional(),
} satisfies Record<Question, z.ZodType>);

export const observation = z.strictObject({
  date,
  plant: name.optional(),
  symptom: name.optional(),
  answers: answers.optional().meta({ description: 'What was seen, question by question of the symptom key.' }),
  weeds: z
    .array(name)
    .max(50)
    .optional()
    .meta({ description: 'Weeds that grow in number at the place, by their names.' }),
  photos: z
    .array(z.string().regex(/^[0-9a-f]{64}$/, 'is the SHA-256 of a photo, in 64 small hexadecimal digits'))
    .max(20)
    .optional()
    .meta({ description: 'SHA-256 of each photo, in hexadecimal.' }),
  note,
});
/** Work ticked off, with what was really used. */
export const task = z.strictObject({
  date,
  task: name.meta({ description: 'What was to be done, as the plan names it.' }),
  used: z.strictObject({ material: name, amount }).optional(),
  note,
});
/** A check of a meter on a soil day: in a buffer, in soil of known pH, or a sample read a second time. */
export const quality = z.strictObject({
  date,
  check: z.enum(['buffer', 'reference', 'duplicate']),
  meter: name,
  expected: ph.unwrap().shape.value.meta({ description: 'What it should show; of a duplicate, the first reading.' }),
  shown: ph.unwrap().shape.value,
  note,
});
