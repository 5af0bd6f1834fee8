import * as z from 'zod';
import { derivation, message, ph, reportOf, share } from './report-parts.ts';

const band = z.looseObject({
  share: share.meta({ description: '0.5, 0.8 or 0.95.' }),
  low: z.array(z.number()),
  high: z.array(z.number()),
});

/** What the pH of a place will do. */
export const foreseen = z.looseObject({
  today: z.iso.date(),
  range: z.looseObject({ low: ph, high: ph }).optional(),
  dates: z.array(z.iso.date()).meta({ description: 'Today and every week after it.' }),
  median: z.array(z.number()),
  bands: z.array(band),
  retestBands: z.array(band).meta({ description: 'What a retest would print, with its own error.' }),
  inside: z.array(share).meta({ description: 'Chance of being inside the range at each date.' }),
  insideBy: z.array(share).meta({ description: 'Chance of having been inside up to each date.' }),
  insideFrom: z.iso.date().optional(),
  overshoot: z.looseObject({ above: share, below: share }).optional(),
  retest: z.looseObject({ date: z.iso.date(), why: message }),
  cautions: z.array(message),
  tests: z.array(z.looseObject({ date: z.iso.date(), ph: z.number(), sd: z.number().min(0), outlier: z.boolean() })),
  marks: z
    .array(
      z.looseObject({
        date: z.iso.date(),
        name: z.string(),
        effect: z.enum(['sweetens', 'sours']),
        state: z.enum(['done', 'planned', 'only if a retest asks']),
        mass: z.number().min(0).optional().meta({ description: 'kg for the whole place, as sold.' }),
      }),
    )
    .meta({ description: 'What was put on, and what the plan would put on.' }),
  members: z.int().min(1),
  seed: z.int(),
});

/** The forecast of each place, as `sorrel forecast --json` prints it. */
export const forecastReport = reportOf({
  decision: z.string().meta({ description: 'Of the plan that the forecast follows.' }),
  withPlan: z.boolean(),
  firstStepOvershoot: share.optional(),
  forecast: foreseen.optional(),
  why: message.optional().meta({ description: 'Why nothing can be forecast.' }),
  derivation: derivation.optional(),
}).meta({ title: 'Forecast report', description: 'What the pH of each place will do, week by week.' });
