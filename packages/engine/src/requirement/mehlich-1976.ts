import { described } from './described.ts';
import { implied } from './implied.ts';
import type { RequirementMethod } from './method.ts';
import { NOT_GIVEN, NOT_MINERAL, TOO_CLOSE } from './outcome.ts';
import { TONNE_PER_HECTARE } from './published-units.ts';
import { recordPublished } from './record.ts';
import { nearestTarget } from './targets.ts';
import { acidityByVolume, scoopDensity } from './volume-acidity.ts';

/**
 * Mehlich's own rule: `0.1 AC² + AC`, meq/100 cm³, which is t CaCO3/ha to 20 cm.
 *
 * @param acidity AC, meq/100 cm³, not negative
 * @source Mehlich1976 (from memory)
 */
export const mehlich1976TonnePerHectare = (acidity: number): number => 0.1 * acidity * acidity + acidity;

const about = described('mehlich-1976');
const UNIT = 't/ha, 20 cm';
const DEPTH = 0.2;
/** Printed only as about 6.0 to 6.5. The upper end reads the soil as less resistant, hence the smaller dose. */
const targets = [6.5] as const;

export const mehlich1976: RequirementMethod = {
  ...about,
  kind: 'acidity',
  direction: 'raise',
  read(input, recorder) {
    const acidity = acidityByVolume(input);
    if (acidity === undefined) return NOT_GIVEN;
    if (input.medium === 'organic' || input.medium === 'soilless') return NOT_MINERAL;
    const target = nearestTarget(targets, input.targetPh, input.present.mean);
    if (target === undefined) return TOO_CLOSE;
    const value = mehlich1976TonnePerHectare(acidity);
    if (recorder)
      recordPublished(recorder, mehlich1976, {
        formula: '0.1 AC^2 + AC',
        terms: [{ symbol: 'AC', value: acidity, unit: 'meq/100 cm3', origin: 'entered' }],
        value,
        unit: UNIT,
      });
    return implied(
      mehlich1976,
      input,
      {
        value,
        unit: UNIT,
        rate: value * TONNE_PER_HECTARE,
        allowance: about.allowance,
        targetPh: target,
        soilMass: DEPTH * scoopDensity(input),
      },
      recorder,
    );
  },
};
