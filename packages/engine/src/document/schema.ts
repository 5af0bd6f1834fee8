import * as z from 'zod';
import * as kind from './kinds.ts';
import {
  bufferKinds,
  cropWords,
  extractants,
  nitrogenWords,
  nutrientWords,
  phMethods,
  textures,
} from './word-lists.ts';

/**
 * The garden document: one schema, from which come its check, its types and its published JSON Schema
 * (`docs/garden-document.schema.json`). British and American spellings stand side by side where people type both.
 */
const texture = z.enum(textures);

export const soil = z.strictObject({
  texture: texture.optional(),
  sand: kind.share.optional(),
  silt: kind.share.optional(),
  clay: kind.share.optional(),
  jar: z
    .strictObject({ afterMinute: kind.length, afterSixHours: kind.length, atEnd: kind.length })
    .optional()
    .meta({ description: 'Height of the settled layer in a jar of soil and water, read three times.' }),
  organicMatter: kind.share.optional(),
  bulkDensity: kind.density.optional(),
  stones: kind.share.optional(),
});

export const printedRate = z.strictObject({
  rate: kind.rate,
  depth: kind.length,
  target: kind.ph,
  cce: kind.share.optional(),
  method: kind.name.optional(),
});

export const nutrient = z
  .strictObject({ nutrient: z.enum(nutrientWords), by: z.enum(extractants), level: kind.nutrientLevel })
  .meta({ description: 'The level of one nutrient, with what the laboratory drew it out with.' });

export const test = z.strictObject({
  date: kind.date,
  by: z.enum(['laboratory', 'slurry-meter', 'colour-kit', 'color-kit', 'strip', 'probe']),
  laboratory: kind.name.optional(),
  region: kind.name.optional(),
  depth: kind.length.optional(),
  cores: kind.count.optional(),
  ph: z.strictObject({ value: kind.ph, in: z.enum(phMethods).optional() }).optional(),
  buffer: z.strictObject({ value: kind.ph, kind: z.enum(bufferKinds) }).optional(),
  acidity: kind.chargePerMass.optional(),
  aluminium: kind.cation.optional(),
  aluminum: kind.cation.optional(),
  calcium: kind.cation.optional(),
  magnesium: kind.cation.optional(),
  potassium: kind.cation.optional(),
  sodium: kind.cation.optional(),
  cec: kind.chargePerMass.optional(),
  cecBasis: z.enum(['pH 7', 'summed cations', 'effective']).optional(),
  baseSaturation: kind.share.optional(),
  organicMatter: kind.share.optional(),
  organicCarbon: kind.share.optional(),
  texture: texture.optional(),
  sand: kind.share.optional(),
  silt: kind.share.optional(),
  clay: kind.share.optional(),
  carbonate: kind.share.optional(),
  fizz: z
    .strictObject({
      acid: z.enum(['none', 'very slight', 'slight', 'strong', 'violent']).optional(),
      vinegar: z.enum(['silent', 'heard only', 'mild', 'vigorous']).optional(),
    })
    .optional(),
  limeBufferCapacity: z
    .strictObject({ value: kind.bufferCapacity, kind: z.enum(['30 min', 'equilibrium']) })
    .optional(),
  conductivity: kind.conductivity.optional(),
  scoopedDensity: kind.density.optional(),
  lead: kind.lead.optional(),
  printedRate: printedRate.optional(),
  nutrients: z.array(nutrient).optional(),
  note: z.string().optional(),
});

export const ownRange = z
  .strictObject({ plant: kind.name, low: kind.ph, high: kind.ph, aim: kind.ph.optional() })
  .meta({ description: 'A plant with the pH range the gardener trusts more than the almanac.' });

export const application = z.strictObject({
  date: kind.date,
  material: kind.name,
  amount: kind.spread,
  note: z.string().optional(),
});

export const feed = z
  .strictObject({
    material: kind.name.optional(),
    form: z.enum(nitrogenWords).optional(),
    nitrogen: kind.spread.optional(),
    amount: kind.spread.optional(),
  })
  .meta({
    description:
      'Fertilizer given in a year: its name or the form of its nitrogen, and the weight of the nitrogen or of the fertilizer.',
  });

export const crop = z
  .strictObject({ of: z.enum(cropWords), weight: kind.spread, returned: kind.yesNo.optional() })
  .meta({
    description:
      'What is carried away in a year, weighed as harvested. Returned: the waste comes back to this place as compost.',
  });

export const compost = z
  .strictObject({ material: kind.name, amount: kind.dressing })
  .meta({ description: 'Compost or manure given in a year.' });

export const sample = z
  .strictObject({
    code: z
      .string()
      .trim()
      .regex(/^[A-Za-z0-9-]{1,12}$/, 'is 1 to 12 letters, digits or hyphens')
      .meta({ description: 'What stands on the bag.', examples: ['A017'] }),
    person: kind.name.optional().meta({ description: 'A first name is enough.' }),
    neighbourhood: kind.name.optional(),
  })
  .meta({ description: 'A bag of soil that somebody brought to a soil day.' });

export const place = z.strictObject({
  name: kind.name,
  sample: sample.optional(),
  kind: z.enum(['bed', 'plot', 'container']).optional(),
  size: kind.size.optional(),
  area: kind.area.optional(),
  pots: z.strictObject({ count: kind.count, volume: kind.volume }).optional(),
  depth: kind.length.optional(),
  situation: z.enum(['open ground', 'around plants', 'lawn', 'container']).optional(),
  medium: z.enum(['mineral', 'organic', 'mix', 'soilless']).optional(),
  soil: soil.optional(),
  plants: z.array(z.union([kind.name, ownRange])).optional(),
  diseases: z
    .array(kind.name)
    .optional()
    .meta({ description: 'Plant diseases seen here that follow the pH, such as clubroot.' }),
  target: z.strictObject({ low: kind.ph, high: kind.ph, aim: kind.ph.optional() }).optional(),
  water: z.strictObject({ alkalinity: kind.alkalinity, perYear: kind.waterDepth.optional() }).optional(),
  feeds: z.array(feed).optional(),
  harvest: z.array(crop).optional(),
  compost: z.array(compost).optional(),
  nearOpenWater: kind.yesNo.optional(),
  childrenOrPets: kind.yesNo.optional(),
  certifiedOrganic: kind.yesNo.optional(),
  tests: z.array(test).optional(),
  applications: z.array(application).optional(),
  note: z.string().optional(),
});

export const material = z.strictObject({
  material: kind.name,
  name: kind.name.optional(),
  cce: kind.share.optional(),
  moisture: kind.share.optional(),
  passing: z
    .record(z.string(), kind.share)
    .optional()
    .meta({ description: 'Share of the product that passes each screen.', examples: [{ '60 mesh': '70 %' }] }),
  efficiency: kind.share.optional(),
  purity: kind.share.optional(),
  iron: kind.share.optional(),
  aluminium: kind.share.optional(),
  aluminum: kind.share.optional(),
  calcium: kind.share.optional(),
  magnesium: kind.share.optional(),
  density: kind.density.optional(),
  bag: z.strictObject({ size: kind.mass, price: z.number().min(0).optional() }).optional(),
  onHand: kind.mass.optional(),
  note: z.string().optional(),
});

export const gardenDocument = z
  .strictObject({
    garden: kind.name,
    note: z.string().optional(),
    units: z.enum(['metric', 'us']).optional(),
    region: kind.name.optional(),
    hemisphere: z.enum(['north', 'south']).optional(),
    asOf: kind.date.optional(),
    soilDay: z
      .strictObject({ date: kind.date, where: kind.name.optional() })
      .optional()
      .meta({ description: 'This garden is a soil day: its places are the samples that people brought.' }),
    climate: kind.name.optional(),
    soilTemperature: z
      .array(z.number().min(-40).max(50))
      .length(12)
      .optional()
      .meta({ description: 'Mean soil temperature at 10 cm, January to December, degrees Celsius.' }),
    airTemperature: z
      .array(z.number().min(-60).max(60))
      .length(12)
      .optional()
      .meta({ description: 'Mean air temperature, January to December, degrees Celsius.' }),
    rain: z
      .array(kind.waterDepth)
      .length(12)
      .optional()
      .meta({ description: 'Rain of each month, January to December.' }),
    latitude: z.number().min(-90).max(90).optional().meta({ description: 'Degrees; below zero in the south.' }),
    overshootChance: z.number().gt(0).max(0.5).optional(),
    finenessSystem: kind.name.optional(),
    money: z.string().trim().min(1).max(8).optional(),
    certifiedOrganic: kind.yesNo.optional(),
    places: z.array(place).min(1),
    materials: z.array(material).optional(),
  })
  .meta({
    title: 'Garden document',
    description: 'A garden, its growing places, their soil tests and the materials at hand.',
  });

export type GardenDocument = z.output<typeof gardenDocument>;
export type SampleEntry = z.output<typeof sample>;
export type PlaceEntry = z.output<typeof place>;
export type TestEntry = z.output<typeof test>;
export type MaterialEntry = z.output<typeof material>;
export type SoilEntry = z.output<typeof soil>;
