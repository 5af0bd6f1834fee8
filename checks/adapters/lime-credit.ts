import { type NcSoilClass, ncResidualShare } from '@sorrel/engine/requirement';
import type { Adapter } from '../adapter.ts';

/** The class of soil whose credit fades at the rate of the case. */
const soilFading = (rate: unknown): NcSoilClass | undefined =>
  (['mineral', 'organic'] as const).find(
    (soil) => typeof rate === 'number' && Math.abs(1 - ncResidualShare(soil, 1) - rate) < 1e-9,
  );

/** What is left of an earlier dose of lime, as North Carolina counts it. */
export const limeCredit: readonly Adapter[] = [
  {
    name: 'North Carolina credit as an amount',
    accepts: ({ inputs, expected }) =>
      'credit_ton_acre' in expected &&
      typeof inputs.dose_ton_acre === 'number' &&
      typeof inputs.months === 'number' &&
      soilFading(inputs.rate_per_month) !== undefined,
    compute: ({ inputs }) => ({
      credit_ton_acre:
        Number(inputs.dose_ton_acre) *
        ncResidualShare(soilFading(inputs.rate_per_month) as NcSoilClass, Number(inputs.months)),
    }),
  },
];
