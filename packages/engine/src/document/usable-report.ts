import * as z from 'zod';
import { message, ph, reportOf, share } from './report-parts.ts';

const basis = z.enum(['read', 'memory', 'derived', 'judgement']);
const sources = z.array(z.string()).min(1);
const series = z
  .enum(['classic', 'revised', 'organic'])
  .meta({ description: 'revised: newer work; classic: the old chart; organic: peat, bark and very organic soil.' });

const usability = z.looseObject({
  ph,
  relative: share.meta({
    description: 'Share of the best of its own line, rough on purpose; people are told the word.',
  }),
  low: share,
  high: share,
  word: z.enum(['good', 'fair', 'poor']),
  beyond: z.boolean().meta({ description: 'The pH lies outside the table, and its end stands in.' }),
  sources,
  basis,
});

const verdict = z.looseObject({
  nutrient: z.string(),
  verdict: z.enum(['enough and usable', 'enough but locked', 'truly short', 'too much', 'cannot tell']),
  class: z
    .looseObject({ class: z.string(), value: z.number(), unit: z.string(), standard: z.string() })
    .optional()
    .meta({ description: "The publication's own class, with the figure in its own unit." }),
  reasons: z.array(message),
  actions: z.array(message).meta({ description: 'What to do, and what not to.' }),
  sources,
  basis,
});

const nutrients = z.looseObject({
  series,
  today: ph,
  planned: ph.optional().meta({ description: 'Only when the plan moves the pH by more than a test can see.' }),
  lines: z.array(
    z.looseObject({
      nutrient: z.string(),
      today: usability,
      planned: usability.optional(),
      why: message,
      change: z.array(message),
    }),
  ),
  dangers: z.array(
    z.looseObject({ danger: z.string(), ph, relative: share, word: z.enum(['none', 'some', 'high']), sources, basis }),
  ),
  verdicts: z.array(verdict).meta({ description: 'From the latest test that lists nutrients.' }),
  messages: z.array(message),
});

/** What the plants of each place can use, as `sorrel usable --json` prints it. */
export const usableReport = reportOf({
  nutrients: nutrients.optional().meta({ description: 'Left out where no pH is known.' }),
}).meta({
  title: 'Usable report',
  description: 'How usable each nutrient is at the pH of today and at the planned one, and what is locked or short.',
});
