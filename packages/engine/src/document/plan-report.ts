import * as z from 'zod';
import { learned } from './learned-report.ts';
import { application, currency, derivation, fromDocument, message, period, ph, product } from './report-parts.ts';

/**
 * A plan for machines, as `sorrel plan --json` prints it: every number in SI, every sentence with its code and its text.
 * One schema for its check, its type and `docs/plan-report.schema.json`. Objects may grow entries; none is taken away.
 */
const plan = z.looseObject({
  decision: z.enum(['leave alone', 'raise', 'lower', 'not practical', 'grow something else', 'find out first']),
  reasons: z.array(message).min(1),
  notes: z.array(message),
  present: z.looseObject({ mean: ph, sd: z.number().min(0), date: z.iso.date() }).optional(),
  target: z.looseObject({ low: ph, high: ph, aim: ph, basis: z.string() }),
  requirement: z.looseObject({ best: currency, low: currency, high: currency }).optional(),
  applications: z.array(application),
  overshootChance: z.number().min(0).max(1).optional(),
  retest: z.looseObject({ ...period, why: message }).optional(),
  cautions: z.array(message),
  ask: z.array(message),
  instead: z.array(z.string()),
  learned: learned.optional(),
  derivation: derivation.optional(),
});

export const planReport = z
  .looseObject({
    garden: z.string(),
    asOf: z.iso.date(),
    places: z.array(
      z.looseObject({
        id: z.string(),
        name: z.string(),
        kind: z.enum(['bed', 'plot', 'container']),
        area: z.number().meta({ description: 'm2' }),
        depth: z.number().meta({ description: 'm' }),
        volume: z.number().optional().meta({ description: 'm3' }),
        plants: z.array(z.string()),
        plan,
      }),
    ),
    shopping: z.array(z.looseObject({ product, needed: z.number(), onHand: z.number(), buy: z.number() })),
    ...fromDocument,
  })
  .meta({ title: 'Plan report', description: 'What to do with each place of a garden, in SI units.' });

export type PlanReport = z.output<typeof planReport>;
