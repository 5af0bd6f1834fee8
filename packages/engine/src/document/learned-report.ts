import * as z from 'zod';
import { derivation, message, ph, reportOf, share } from './report-parts.ts';

const learning = {
  prior: z.looseObject({ median: z.number(), sdLog: z.number() }),
  median: z.number(),
  low: z.number().meta({ description: 'Low end of the middle 80 %.' }),
  high: z.number().meta({ description: 'High end of the middle 80 %.' }),
};

/** What the record of a place has taught. */
export const learned = z.looseObject({
  resistance: z
    .looseObject({
      ...learning,
      factor: z.number().meta({ description: 'Against what texture and tests suggest: 1.4 needs 40 % more.' }),
      factorLow: z.number(),
      factorHigh: z.number(),
      chanceMore: share,
      capped: z.boolean(),
      taught: z.boolean(),
    })
    .meta({ description: 'Least buffer capacity, kg CaCO3/kg/pH.' }),
  rate: z
    .looseObject({ ...learning, of: z.enum(['lime', 'sulfur']), factor: z.number() })
    .optional()
    .meta({ description: 'Speed of lime, m/day, or of sulfur, kg/m2/day.' }),
  drift: z.looseObject(learning).meta({ description: 'Acid the place makes by itself, kg CaCO3/m2 a year.' }),
  present: z.looseObject({ mean: ph, sd: z.number().min(0), date: z.iso.date() }).optional(),
  tests: z.array(
    z.looseObject({
      date: z.iso.date(),
      ids: z.array(z.string()),
      ph,
      sd: z.number().min(0),
      role: z.enum(['learned from', 'pH only']),
      expected: z.looseObject({ mean: z.number(), sd: z.number() }).optional(),
      outlier: z.boolean(),
    }),
  ),
  trend: z
    .looseObject({
      from: z.iso.date(),
      to: z.iso.date(),
      readings: z.int(),
      slope: z.number().meta({ description: 'pH a year.' }),
      sd: z.number(),
      real: z.boolean(),
    })
    .optional(),
  change: z
    .looseObject({ from: z.iso.date(), to: z.iso.date(), change: z.number(), needed: z.number(), real: z.boolean() })
    .optional(),
  judged: z.int().min(0).meta({ description: 'Applications that a later test has judged.' }),
  messages: z.array(message),
});

/** What each place has taught, as `sorrel learned --json` prints it. */
export const learnedReport = reportOf({
  learned: learned.optional(),
  why: message.optional().meta({ description: 'Why nothing can be learned.' }),
  derivation: derivation.optional(),
}).meta({ title: 'Learned report', description: 'What the record of each place has taught, in SI units.' });
