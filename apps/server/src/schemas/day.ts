import { z } from '@hono/zod-openapi';
import { id } from './shared.ts';

const code = z.string().openapi({ description: 'What stands on the bag.', example: 'A017' });

/** Why a day has nothing to give yet is told by its progress. */
export const dayProgress = z
  .object({
    state: z.enum(['none', 'running', 'paused', 'done']).openapi({
      description:
        'none: never begun. running: samples wait or are being planned. paused: begins nothing new. done: nothing is left to do; some may have failed.',
    }),
    asOf: z.iso.date().nullable().openapi({ description: 'The day planned for.' }),
    samples: z.int().min(0).openapi({ description: 'How many samples the day has now.' }),
    waiting: z.int().min(0),
    running: z.int().min(0),
    done: z.int().min(0),
    failed: z.int().min(0),
    changed: z.int().min(0).openapi({
      description: 'Samples that are new or have changed since they were handed in: plan again to have them planned.',
    }),
    jobs: z
      .array(
        z.object({
          place: id,
          code,
          state: z.enum(['new', 'waiting', 'running', 'done', 'failed']),
          changed: z.boolean(),
          error: z.string().optional(),
        }),
      )
      .openapi({ description: 'Each sample, in check-in order.' }),
  })
  .openapi('DayProgress', { description: 'How far the plans of a soil day are.' });

const count = z.int().min(0);
const group = z.object({
  name: z.string().nullable().openapi({ description: 'null: samples without a neighbourhood, or all together.' }),
  samples: count,
  medianPh: z.number().nullable(),
  classes: z.array(count).openapi({ description: 'In the order of `classes` of the summary.' }),
});

export const daySummary = z
  .object({
    samples: count.openapi({ description: 'How many are planned and counted here.' }),
    classes: z.array(
      z.object({
        name: z.string().openapi({ example: 'strongly acid' }),
        low: z.number().nullable(),
        high: z.number().nullable(),
      }),
    ),
    all: group,
    neighbourhoods: z.array(group),
    decisions: z.array(z.object({ decision: z.string(), text: z.string(), count })),
    problems: z
      .array(z.object({ code: z.string(), text: z.string(), count }))
      .openapi({ description: 'The commonest first.' }),
    shopping: z.array(
      z.object({
        product: z.string(),
        needed: z.string().openapi({ description: 'With its unit.' }),
        kilograms: z.number(),
      }),
    ),
    calls: z
      .array(z.object({ code, person: z.string().nullable(), place: id, name: z.string(), why: z.array(z.string()) }))
      .openapi({ description: 'Who should be called, and why: something looks wrong or is unsafe.' }),
  })
  .openapi('DaySummary', { description: "A soil day's soils together. It names people: for the educator alone." });
