import { described } from './described.ts';
import { implied } from './implied.ts';
import type { RequirementMethod } from './method.ts';
import { NOT_GIVEN, NOT_MINERAL, TARGET_TOO_HIGH, TOO_CLOSE } from './outcome.ts';
import { CACO3_PER_MOL } from './published-units.ts';
import { recordPublished } from './record.ts';
import { nearestTarget } from './targets.ts';

/**
 * Lime to take aluminium out of action: `1.5 Al`, in the unit of Al (cmol_c CaCO3 per kg).
 *
 * @param aluminium exchangeable (1 M KCl) aluminium, not negative
 * @source Kamprath1970: abstract read, the multiplier from memory
 */
export const kamprath15 = (aluminium: number): number => 1.5 * aluminium;

const about = described('kamprath');
const CMOL_PER_MOL = 100;
/** pH at which aluminium is gone. */
export const ALUMINIUM_FREE = [5.5] as const;
/** Above this target an aluminium rule says too little: it stops at 5.5. [judgement] */
export const HIGHEST_TARGET = 6;

export const kamprath: RequirementMethod = {
  ...about,
  kind: 'aluminium',
  direction: 'raise',
  read(input, recorder) {
    const { aluminium } = input.test;
    if (aluminium === undefined) return NOT_GIVEN;
    if (input.medium !== 'mineral') return NOT_MINERAL;
    if (input.targetPh > HIGHEST_TARGET) return TARGET_TOO_HIGH;
    const target = nearestTarget(ALUMINIUM_FREE, input.targetPh, input.present.mean);
    if (target === undefined) return TOO_CLOSE;
    const value = kamprath15(aluminium * CMOL_PER_MOL);
    if (recorder)
      recordPublished(recorder, kamprath, {
        formula: '1.5 Al',
        terms: [{ symbol: 'Al', value: aluminium * CMOL_PER_MOL, unit: 'cmolc/kg', origin: 'entered' }],
        value,
        unit: 'cmolc CaCO3/kg',
      });
    return implied(
      kamprath,
      input,
      {
        value,
        unit: 'cmolc CaCO3/kg',
        rate: (value / CMOL_PER_MOL) * CACO3_PER_MOL,
        allowance: about.allowance,
        targetPh: target,
        soilMass: 1,
      },
      recorder,
    );
  },
};
