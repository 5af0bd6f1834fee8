import * as z from 'zod';

/** Kinds of entry that stand in many fields of the garden document. Text quantities are written as a gardener writes them. */
const measured = (description: string, ...examples: string[]) =>
  z
    .string()
    .regex(/[0-9]/, 'needs a number with its unit')
    .meta({ description: `${description} A number with its unit.`, examples });

export const length = measured('A length.', '6 in', '15 cm');
export const area = measured('An area.', '48 sq ft', '7.2 m2');
export const size = measured('Length by width of a growing place.', '4 x 8 ft', '1.2 m x 6 m');
export const volume = measured('A volume.', '12 L', '3 gal');
export const mass = measured('A weight.', '40 lb', '25 kg');
export const share = measured('A share of the whole.', '4.2 %', '42 g/kg');
export const density = measured('A density.', '1.2 g/cm3', '75 lb/ft3');
export const spread = measured('A weight for the whole place, or a weight for an area.', '5 lb', '250 g/m2');
export const dressing = measured(
  'A weight or a volume for the whole place, a weight for an area, or how deep it is spread.',
  '20 kg',
  '60 L',
  '2 kg/m2',
  '1 cm',
);
export const rate = measured('A weight for an area.', '50 lb/1000 ft2', '2.5 t/ha');
export const alkalinity = measured('Alkalinity of water.', '150 mg/L CaCO3', '3 meq/L');
export const conductivity = measured('Electrical conductivity.', '0.4 dS/m');
export const waterDepth = measured('A depth of water.', '300 mm', '12 in');
export const chargePerMass = measured('Charge for a weight of soil.', '4.5 meq/100 g', '4.5 cmol/kg');
export const cation = measured(
  'An extractable cation, as charge or as weight for a weight of soil.',
  '820 mg/kg',
  '1640 lb/acre',
  '4.1 cmol/kg',
);
export const lead = measured('Total lead for a weight of soil.', '85 mg/kg', '85 ppm');
export const nutrientLevel = measured(
  'Level of a nutrient for a weight of soil or for an acre of it; of a potting mix for a litre of extract.',
  '24 mg/kg',
  '48 lb/acre',
  '120 mg/L',
);
export const bufferCapacity = measured(
  'Lime buffer capacity for a weight of soil and one pH step.',
  '550 mg/kg',
  '0.55 g/kg',
);

export const ph = z.number().min(0).max(14).meta({ description: 'A pH, 0 to 14.' });
export const name = z.string().trim().min(1);
/** Calendar day, ISO 8601. */
export const date = z.iso.date().meta({ description: 'A day, ISO 8601.', examples: ['2026-10-03'] });
/** YAML 1.2 reads `yes` as a word, so both the word and the JSON value are taken. */
export const yesNo = z.union([z.boolean(), z.enum(['yes', 'no'])]);
export const count = z.int().min(1).max(100_000);
