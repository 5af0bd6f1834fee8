import * as z from 'zod';
import { derivation, message, reportOf } from './report-parts.ts';

const amount = z.number().meta({ description: 'kg CaCO3 equivalent per m2; positive sweetens.' });

const year = z.looseObject({
  from: z.iso.date(),
  to: z.iso.date(),
  entries: z.record(z.string(), amount),
  change: amount.meta({ description: 'Sum of the entries.' }),
  ph: z.looseObject({ start: z.number(), end: z.number() }),
});

/** What pushes the pH of each place, as `sorrel account --json` prints it. */
export const accountReport = reportOf({
  withPlan: z.boolean(),
  account: z
    .looseObject({
      years: z.array(year),
      content: z.looseObject({ start: z.number(), end: z.number() }),
      unreacted: z.looseObject({ lime: z.number(), sulfur: z.number() }),
    })
    .optional(),
  same: year.optional().meta({ description: 'A year like this one with nothing new put on.' }),
  why: message.optional().meta({ description: 'Why there is no account.' }),
  derivation: derivation.optional(),
}).meta({ title: 'Account report', description: 'Everything that pushes the pH of each place, in one currency.' });
