import { described } from './described.ts';
import { implied } from './implied.ts';
import { ALUMINIUM_FREE, HIGHEST_TARGET } from './kamprath.ts';
import type { RequirementMethod } from './method.ts';
import { beyond, NOT_GIVEN, NOT_MINERAL, TARGET_TOO_HIGH, TOO_CLOSE } from './outcome.ts';
import { TONNE_PER_HECTARE } from './published-units.ts';
import { recordPublished } from './record.ts';
import { nearestTarget } from './targets.ts';
import { MEQ_PER_100_CM3, scoopDensity } from './volume-acidity.ts';

/**
 * Brazil: `2 Al + (2 - (Ca + Mg))`, t/ha to 20 cm, only where calcium and magnesium together stay below 2.
 * The page read prints the bracket with a plus, which would give more lime to the richer soil.
 *
 * @param aluminium cmol_c/dm³
 * @param calciumMagnesium Ca + Mg, cmol_c/dm³
 * @returns NaN when Ca + Mg is 2 or more
 * @source BR-portal (sign from memory)
 */
export const aluminiumCaMgTonnePerHectare = (aluminium: number, calciumMagnesium: number): number =>
  calciumMagnesium < 2 ? 2 * aluminium + (2 - calciumMagnesium) : Number.NaN;

const about = described('br-al-camg');
const OUTSIDE = beyond(about.domain);
const DEPTH = 0.2;
const UNIT = 't/ha, 20 cm';

export const brAlCaMg: RequirementMethod = {
  ...about,
  kind: 'aluminium',
  direction: 'raise',
  read(input, recorder) {
    const { aluminium, calcium, magnesium } = input.test;
    if (aluminium === undefined || calcium === undefined || magnesium === undefined) return NOT_GIVEN;
    if (input.medium !== 'mineral') return NOT_MINERAL;
    if (input.targetPh > HIGHEST_TARGET) return TARGET_TOO_HIGH;
    const target = nearestTarget(ALUMINIUM_FREE, input.targetPh, input.present.mean);
    if (target === undefined) return TOO_CLOSE;
    const density = scoopDensity(input);
    const toVolume = density / MEQ_PER_100_CM3;
    const bases = (calcium + magnesium) * toVolume;
    const value = aluminiumCaMgTonnePerHectare(aluminium * toVolume, bases);
    if (Number.isNaN(value)) return OUTSIDE;
    if (recorder)
      recordPublished(recorder, brAlCaMg, {
        formula: '2 Al + (2 - (Ca + Mg))',
        terms: [
          { symbol: 'Al', value: aluminium * toVolume, unit: 'cmolc/dm3', origin: 'entered' },
          { symbol: 'Ca + Mg', value: bases, unit: 'cmolc/dm3', origin: 'entered' },
        ],
        value,
        unit: UNIT,
      });
    return implied(
      brAlCaMg,
      input,
      {
        value,
        unit: UNIT,
        rate: value * TONNE_PER_HECTARE,
        allowance: about.allowance,
        targetPh: target,
        soilMass: DEPTH * density,
      },
      recorder,
    );
  },
};
