import { described } from './described.ts';
import { impliedByCapacity } from './implied.ts';
import type { RequirementMethod } from './method.ts';
import { NOT_GIVEN } from './outcome.ts';
import { curtinTrolove } from './ptf.ts';
import { recordPublished } from './record.ts';

const OC = 6;
const CLAY = 15;

const about = described('compost-bed');
const UNIT = 'g CaCO3/kg/pH';

/** A raised bed filled with a compost-rich mix, when no more than that is known: a guess with the widest error. */
export const compostBed: RequirementMethod = {
  ...about,
  kind: 'medium',
  direction: 'both',
  read(input, recorder) {
    if (input.medium !== 'mix') return NOT_GIVEN;
    const value = curtinTrolove(OC, CLAY);
    if (recorder)
      recordPublished(recorder, compostBed, {
        formula: '0.50045 (1 + 1.02 OC + 0.058 clay)',
        terms: [
          { symbol: 'OC', value: OC, unit: '%', origin: 'choice' },
          { symbol: 'clay', value: CLAY, unit: '%', origin: 'choice' },
        ],
        value,
        unit: UNIT,
      });
    return impliedByCapacity(
      compostBed,
      input,
      { value, unit: UNIT, capacity: value * 1e-3, from: 4.5, to: 6.5 },
      recorder,
    );
  },
};
