import type { Ph } from '../units/si.ts';
import { described, publishedSoilMass } from './described.ts';
import { implied } from './implied.ts';
import type { RequirementMethod } from './method.ts';
import { NOT_GIVEN, NOT_MINERAL, TOO_CLOSE } from './outcome.ts';
import { LB_PER_ACRE } from './published-units.ts';
import { recordPublished } from './record.ts';
import { nearestTarget } from './targets.ts';

export type PsuTarget = 6 | 6.5 | 7;
const perMeq = (target: PsuTarget): number => (target === 6 ? 675 : target === 6.5 ? 840 : 1000);
const targets: readonly PsuTarget[] = [6, 6.5, 7];
/** Acidity below which the 6.5 rule prints a flat rate, meq/100 g. */
const FLOOR_BELOW = 4;

/**
 * Pennsylvania: lb CCE per acre, 7 in, from exchangeable acidity. For target 6.5 an acidity below 4 at a pH below 6.5
 * prints 2000 flat, and above needs nothing; the text leaves 4 itself open and it takes the slope here.
 *
 * @param acidity EA, meq/100 g, not negative
 * @param ph present pH, asked only for target 6.5; taken as below 6.5 when left out
 * @source PSU-agguide (read); the 675 of target 6.0 is fitted to PSU-turf
 */
export function psuLbCcePerAcre(acidity: number, target: PsuTarget, ph?: Ph): number {
  if (target === 6.5 && acidity < FLOOR_BELOW) return ph !== undefined && ph >= 6.5 ? 0 : 2000;
  return acidity * perMeq(target);
}

const about = described('psu-mehlich');
const SOIL_MASS = publishedSoilMass(about.id);
const UNIT = 'lb CCE/acre, 7 in';
const MEQ_PER_100_G = 100;

/**
 * The flat 2000 lb is the least a spreader can put down, not a reading of the soil, so a small acidity is read on the
 * line for 7.0 instead, which has no floor.
 */
export const psuMehlich: RequirementMethod = {
  ...about,
  kind: 'acidity',
  direction: 'raise',
  read(input, recorder) {
    if (input.test.acidity === undefined) return NOT_GIVEN;
    if (input.medium === 'organic' || input.medium === 'soilless') return NOT_MINERAL;
    const acidity = input.test.acidity * MEQ_PER_100_G;
    let target = nearestTarget(targets, input.targetPh, input.present.mean) as PsuTarget | undefined;
    if (target === undefined) return TOO_CLOSE;
    if (target === 6.5 && acidity < FLOOR_BELOW) target = 7;
    const value = psuLbCcePerAcre(acidity, target);
    if (recorder)
      recordPublished(recorder, psuMehlich, {
        formula: `EA x ${perMeq(target)}`,
        terms: [{ symbol: 'EA', value: acidity, unit: 'meq/100 g', origin: 'entered' }],
        value,
        unit: UNIT,
      });
    return implied(
      psuMehlich,
      input,
      {
        value,
        unit: UNIT,
        rate: value * LB_PER_ACRE,
        allowance: about.allowance,
        targetPh: target,
        soilMass: SOIL_MASS,
      },
      recorder,
    );
  },
};
