import * as z from 'zod';

/**
 * A plan for machines, as `sorrel plan --json` prints it: every number in SI, every sentence with its code and its text.
 * One schema for its check, its type and `docs/plan-report.schema.json`. Objects may grow entries; none is taken away.
 */
const ph = z.number().min(0).max(14);
const currency = z
  .number()
  .meta({ description: 'kg CaCO3 equivalent per m2 (per m3 for containers); negative sours.' });
const message = z.looseObject({ code: z.string(), text: z.string() });
const period = { earliest: z.iso.date(), latest: z.iso.date() };

export const product = z.looseObject({
  material: z.string(),
  name: z.string(),
  role: z.string(),
  currency: z.number().meta({ description: 'kg CaCO3 per kg as sold; negative sours.' }),
  efficiency: z.number().min(0).max(1),
});

const application = z.looseObject({
  number: z.int().min(1),
  product,
  mass: z.number().min(0).meta({ description: 'kg for the whole place, as sold.' }),
  perArea: z.number().min(0).optional().meta({ description: 'kg/m2, as sold.' }),
  perVolume: z.number().min(0).optional().meta({ description: 'kg/m3 of mix, as sold.' }),
  currency,
  ...period,
  onlyIfRetest: z.boolean(),
  how: z.array(message),
});

const step = z.looseObject({
  index: z.int().min(0),
  symbol: z.string(),
  title: z.string(),
  formula: z.string(),
  terms: z.array(
    z.looseObject({
      symbol: z.string(),
      value: z.union([z.number(), z.string()]),
      unit: z.string(),
      origin: z.string(),
    }),
  ),
  value: z.union([z.number(), z.string()]),
  unit: z.string(),
  sources: z.array(z.string()).min(1),
  basis: z.enum(['read', 'memory', 'derived', 'judgement']),
});

const plan = z.looseObject({
  decision: z.enum(['leave alone', 'raise', 'lower', 'not practical', 'grow something else', 'find out first']),
  reasons: z.array(message).min(1),
  present: z.looseObject({ mean: ph, sd: z.number().min(0), date: z.iso.date() }).optional(),
  target: z.looseObject({ low: ph, high: ph, aim: ph, basis: z.string() }),
  requirement: z.looseObject({ best: currency, low: currency, high: currency }).optional(),
  applications: z.array(application),
  overshootChance: z.number().min(0).max(1).optional(),
  retest: z.looseObject({ ...period, why: message }).optional(),
  cautions: z.array(message),
  ask: z.array(message),
  instead: z.array(z.string()),
  derivation: z.looseObject({ steps: z.array(step) }).optional(),
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
    problems: z.array(
      z.looseObject({
        code: z.string(),
        place: z.string().optional(),
        field: z.string(),
        message: z.string(),
        fix: z.string(),
      }),
    ),
    leftOut: z.array(z.string()),
    choices: z.array(z.looseObject({ place: z.string().optional(), field: z.string(), message })),
  })
  .meta({ title: 'Plan report', description: 'What to do with each place of a garden, in SI units.' });

export type PlanReport = z.output<typeof planReport>;
