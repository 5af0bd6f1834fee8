import * as z from 'zod';
import { basis, list, number, optionalNumber, optionalText, sources, text, yesNo } from './columns.ts';
import { limitGroup } from './limit-groups.ts';

const fraction = number.refine((value) => value >= 0 && value <= 1, 'a mass fraction lies between 0 and 1');

export const row = z.strictObject({
  key: text,
  name: text,
  alsoCalled: list,
  role: z.enum(['liming', 'acidifying', 'neutral', 'fertilizer', 'organic']),
  form: z.enum(['powder', 'granule', 'pellet', 'crystal', 'liquid', 'bulk', 'ash']),
  formula: optionalText,
  /** kg CaCO3 per kg of dry, pure material: positive limes, negative sours. */
  nvLow: number,
  nvTypical: number,
  nvHigh: number,
  calcium: fraction,
  magnesium: fraction,
  sulfur: fraction,
  nitrogen: fraction,
  iron: optionalNumber,
  aluminium: optionalNumber,
  /** Loose bulk density, g/mL. */
  densityLow: optionalNumber,
  densityTypical: optionalNumber,
  /** Assumed share that reacts, when no label or sieves say; empty where fineness means nothing. */
  efficiency: optionalNumber,
  purity: fraction,
  moisture: fraction,
  /** Codes of the `cautions` table. */
  cautions: list,
  /** Message that explains why it is not to be used for changing pH at home. */
  refused: optionalText,
  /** Whether organic certifiers usually allow it (from memory; `ask` when unsure). The certifier decides. */
  organic: z.enum(['yes', 'no', 'ask']),
  limitGroup: z.union([z.literal('').transform(() => undefined), limitGroup]),
  /** By-product: no figure without its own analysis. */
  needsAnalysis: yesNo,
  sources,
  basis,
  note: optionalText,
});
