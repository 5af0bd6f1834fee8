import { type PedotransferRow, pedotransferFunctions } from '@sorrel/almanac/ptf';
import { CACO3_PER_MOL } from './published-units.ts';

const byId = new Map(pedotransferFunctions.map((row) => [row.id, row]));
/** g CaCO3/kg in one unit of the published function. */
const sizes: Readonly<Partial<Record<PedotransferRow['unit'], number>>> = {
  'cmolc/kg': CACO3_PER_MOL * 10,
  'g CaCO3/kg': 1,
};

/**
 * Lime buffer capacity by one of the almanac's straight-line functions, g CaCO3/kg/pH; never below 0.
 *
 * @param id row of the almanac table `ptf`
 * @param oc organic carbon, per cent
 * @param clay clay, per cent; ignored by functions of carbon alone
 * @throws RangeError for an unknown id, or a function of another form
 * @source HB-PTF (read), for the publication the row names
 */
export function pedotransfer(id: string, oc: number, clay: number): number {
  const row = byId.get(id);
  const size = row === undefined ? undefined : sizes[row.unit];
  if (row?.intercept === undefined || size === undefined) throw new RangeError(`no straight-line function ${id}`);
  return Math.max(
    0,
    size * (row.intercept + (row.per_oc_percent ?? Number.NaN) * oc + (row.per_clay_percent ?? 0) * clay),
  );
}

/**
 * McBratney 2002 as an open library has it, g CaCO3/kg/pH; doubtful, because what stands for the remainder
 * was taken as 100 - clay. Cross-check only.
 *
 * @source McBratney2002, through HB-PTF
 */
export function mcBratney2002(oc: number, clay: number): number {
  const rest = 100 - clay;
  return CACO3_PER_MOL * (6.38 - 0.08 * clay + 2.63 * oc - 0.23 * rest + 0.02 * clay * rest + 0.17 * rest * oc);
}

/**
 * Weaver 2004, Georgia Coastal Plain: `1/(0.0087 exp(-2.16 OC))`, kg CaCO3/ha/pH in 15 cm.
 *
 * @param oc organic carbon, per cent, at most 2: explosive above 1.5; NaN above 2
 * @source Weaver2004, through HB-PTF
 */
export const weaver2004KgPerHectare = (oc: number): number =>
  oc <= 2 ? 1 / (0.0087 * Math.exp(-2.16 * oc)) : Number.NaN;

/** Straight-line functions in the almanac's order, for showing the spread between them. */
export const straightLineFunctions: readonly string[] = pedotransferFunctions
  .filter((row) => row.intercept !== undefined)
  .map((row) => row.id);
