import { psuTurfTable } from '@sorrel/almanac/psu-turf';
import { described, publishedSoilMass } from './described.ts';
import { implied } from './implied.ts';
import { type Line, lineOf, valueAt } from './line.ts';
import type { RequirementMethod } from './method.ts';
import { beyond, NOT_GIVEN, NOT_MINERAL, TOO_CLOSE } from './outcome.ts';
import type { PsuTarget } from './psu-mehlich.ts';
import { LB_PER_1000_SQ_FT } from './published-units.ts';
import { recordPublished } from './record.ts';
import { nearestTarget } from './targets.ts';

const column = (target: PsuTarget): Line =>
  lineOf(
    psuTurfTable
      .filter((row) => row.target_ph === target)
      .map((row) => [row.acidity_meq_per_100g, row.lb_cce_per_1000sqft]),
  );
const TO_6 = column(6);
const TO_6_5 = column(6.5);
const TO_7 = column(7);
const columnFor = (target: PsuTarget): Line => (target === 6 ? TO_6 : target === 6.5 ? TO_6_5 : TO_7);
const targets: readonly PsuTarget[] = [6, 6.5, 7];
/** Smallest rate the table prints: a floor, not a reading. */
const FLOOR = 50;

/**
 * Pennsylvania turf table: lb CCE per 1000 sq ft. The same rule as the field equation, in printed steps; straight lines
 * between its rows.
 *
 * @param acidity EA, 2 to 25.1 meq/100 g; NaN outside
 * @source PSU-turf (read)
 */
export const psuTurfLbPer1000SqFt = (acidity: number, target: PsuTarget): number => valueAt(columnFor(target), acidity);

const about = described('psu-turf');
const OUTSIDE = beyond(about.domain);
const SOIL_MASS = publishedSoilMass(about.id);
const UNIT = 'lb CCE/1000 sq ft';
const MEQ_PER_100_G = 100;

/** Shown beside the field equation as a cross-check: both read the same acidity. */
export const psuTurf: RequirementMethod = {
  ...about,
  kind: 'acidity',
  direction: 'raise',
  read(input, recorder) {
    if (input.test.acidity === undefined) return NOT_GIVEN;
    if (input.medium === 'organic' || input.medium === 'soilless') return NOT_MINERAL;
    const acidity = input.test.acidity * MEQ_PER_100_G;
    const target = nearestTarget(targets, input.targetPh, input.present.mean) as PsuTarget | undefined;
    if (target === undefined) return TOO_CLOSE;
    const value = psuTurfLbPer1000SqFt(acidity, target);
    if (!(value > FLOOR)) return OUTSIDE;
    if (recorder)
      recordPublished(recorder, psuTurf, {
        formula: 'table(EA, T), straight lines between rows',
        terms: [
          { symbol: 'EA', value: acidity, unit: 'meq/100 g', origin: 'entered' },
          { symbol: 'T', value: target, unit: 'pH', origin: 'choice' },
        ],
        value,
        unit: UNIT,
      });
    return implied(
      psuTurf,
      input,
      {
        value,
        unit: UNIT,
        rate: value * LB_PER_1000_SQ_FT,
        allowance: about.allowance,
        targetPh: target,
        soilMass: SOIL_MASS,
      },
      recorder,
    );
  },
};
