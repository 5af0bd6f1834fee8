import { z } from '@hono/zod-openapi';
import type { Message } from '@sorrel/engine/derivation';
import { say } from '@sorrel/engine/units';

/** What of an arrangement is printed; whatever else the page knows of it is passed over. */
const text = z.string().max(500);
const figure = z.number().min(0);
const sentence = z.object({
  code: text,
  parameters: z
    .record(
      text,
      z.union([
        text,
        z.number(),
        z.object({ value: z.number(), dimension: z.enum(['mass', 'area', 'ph', 'share', 'length', 'volume']) }),
      ]),
    )
    .optional(),
});
const message = sentence.refine(isKnown, 'is no sentence that Sorrel knows');
const messages = z.array(message).max(50);
const figures = z.object({
  currency: figure,
  material: figure,
  money: figure.optional(),
  months: figure,
  places: figure,
  unmet: figure,
});
const growing = z.object({ plant: text, area: figure, stays: z.boolean(), fixed: z.boolean() });
const place = z.object({
  name: text,
  seasons: z.array(z.array(growing).max(200)).min(1).max(3),
  reasons: messages,
  move: z
    .object({ material: figure, months: figure, product: z.object({ name: text }).optional() })
    .nullish()
    .transform((move) => move ?? undefined),
});

export const arrangement = z
  .object({
    places: z.array(place).max(500),
    unmet: z
      .array(z.object({ plant: text, area: figure, seasons: z.array(z.int()).max(3), reasons: messages }))
      .max(500),
    clashes: z.array(z.object({ messages })).max(500),
    apart: messages.max(500),
    messages,
    figures,
    greedy: figures,
    runnerUp: z.object({ figures, messages }).optional(),
  })
  .openapi('Arrangement');

function isKnown(message: z.infer<typeof sentence>): boolean {
  try {
    say(message as Message, 'metric');
    return true;
  } catch {
    return false;
  }
}
