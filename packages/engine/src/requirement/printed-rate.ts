import { methodRows } from '@sorrel/almanac/methods';
import { described } from './described.ts';
import { implied } from './implied.ts';
import type { RequirementMethod } from './method.ts';
import { NOT_GIVEN, PRINTED_ZERO, TOO_CLOSE } from './outcome.ts';
import { FURROW_SLICE_DENSITY } from './published-units.ts';
import { recordPublished } from './record.ts';
import { names } from './region.ts';
import { nearestTarget } from './targets.ts';

const usedRows = methodRows.filter((row) => row.used === 'yes');

/**
 * k inside a laboratory's rate: that of the method it names, else of the method its region uses, else 1.
 *
 * @param method as printed
 * @param region whose calibration the laboratory uses
 */
export function printedAllowance(method: string | undefined, region: string | undefined): number {
  const named = method === undefined ? undefined : usedRows.find((row) => row.id === method || row.title === method);
  const regional =
    region === undefined ? undefined : usedRows.find((row) => row.regions.length > 0 && names(row.regions, region));
  return (named ?? regional)?.allowance ?? 1;
}

const about = described('printed-rate');
const UNIT = 'kg/m2, as printed';

/** A rate the laboratory printed, with its own depth, target and material: better than its buffer pH in a foreign table. */
export const printedRate: RequirementMethod = {
  ...about,
  kind: 'printed rate',
  direction: 'raise',
  read(input, recorder) {
    const printed = input.test.printedRate;
    if (printed === undefined) return NOT_GIVEN;
    if (!(printed.rate > 0) || !(printed.depth > 0)) return PRINTED_ZERO;
    const target = nearestTarget([printed.targetPh], input.targetPh, input.present.mean);
    if (target === undefined) return TOO_CLOSE;
    const allowance = printedAllowance(printed.method, input.test.region ?? input.region);
    if (recorder)
      recordPublished(recorder, printedRate, {
        formula: 'as printed',
        terms: [
          { symbol: 'rate', value: printed.rate, unit: 'kg/m2', origin: 'entered' },
          { symbol: 'depth', value: printed.depth, unit: 'm', origin: 'entered' },
          { symbol: 'NV', value: printed.neutralisingValue, unit: 'kg/kg', origin: 'entered' },
        ],
        value: printed.rate,
        unit: UNIT,
      });
    return implied(
      printedRate,
      input,
      {
        value: printed.rate,
        unit: UNIT,
        rate: printed.rate * printed.neutralisingValue,
        allowance,
        targetPh: target,
        soilMass: printed.depth * (input.test.scoopedDensity ?? FURROW_SLICE_DENSITY),
      },
      recorder,
    );
  },
};
