import * as z from 'zod';

/** Pieces that the reports for machines share. */
export const ph = z.number().min(0).max(14);
export const share = z.number().min(0).max(1);
export const currency = z
  .number()
  .meta({ description: 'kg CaCO3 equivalent per m2 (per m3 for containers); negative sours.' });
export const message = z.looseObject({ code: z.string(), text: z.string() });
export const period = { earliest: z.iso.date(), latest: z.iso.date() };

export const product = z.looseObject({
  material: z.string(),
  name: z.string(),
  role: z.string(),
  currency: z.number().meta({ description: 'kg CaCO3 per kg as sold; negative sours.' }),
  efficiency: z.number().min(0).max(1),
});

export const application = z.looseObject({
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

export const derivation = z.looseObject({ steps: z.array(step) });

/** What every report says of the document it rests on. */
export const fromDocument = {
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
};

/** A report with one entry a place. */
export const reportOf = <Shape extends z.core.$ZodShape>(place: Shape) =>
  z.looseObject({
    garden: z.string(),
    asOf: z.iso.date(),
    places: z.array(z.looseObject({ id: z.string(), name: z.string(), ...place })),
    ...fromDocument,
  });
