import * as z from 'zod';
import { application, message, reportOf, share } from './report-parts.ts';

/** The ways open to a place, as `sorrel compare --json` prints them. */
export const comparisonReport = reportOf({
  decision: z.string(),
  ways: z.array(
    z.looseObject({
      kind: z.enum([
        'do nothing',
        'the plan',
        'all at once',
        'two steps',
        'faster material',
        'other plants',
        'container',
      ]),
      open: z.boolean().meta({ description: 'False for a way that a limit or a caution closes; its notes say which.' }),
      cost: z.number().min(0).optional().meta({ description: 'In the money of the garden.' }),
      months: z.number().min(0).optional().meta({ description: 'Until the median is inside the range.' }),
      insideAfterYear: share.optional(),
      overshoot: share.optional(),
      jobs: z.int().min(0),
      applications: z.array(application),
      plants: z.array(z.string()).optional(),
      notes: z.array(message),
    }),
  ),
}).meta({ title: 'Comparison report', description: 'The ways open to each place, side by side.' });
