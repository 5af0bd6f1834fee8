import type { TextureClass } from '../evidence/soil-test.ts';
import { described } from './described.ts';
import { impliedByCapacity } from './implied.ts';
import type { RequirementMethod } from './method.ts';
import { NOT_GIVEN, NOT_MINERAL } from './outcome.ts';
import { curtinTrolove } from './ptf.ts';
import { recordPublished } from './record.ts';

export type Grade = 'coarse' | 'medium' | 'fine';

/** Organic carbon assumed when only the texture is known, per cent. [SORREL, judgement] */
export const ASSUMED_CARBON = 1.5;
/** Clay assumed for a class that was named or felt, per cent. [SORREL, judgement] */
export const assumedClay: Readonly<Record<Grade, number>> = { coarse: 8, medium: 18, fine: 35 };

const grades: Readonly<Record<TextureClass, Grade>> = {
  sand: 'coarse',
  'loamy sand': 'coarse',
  'sandy loam': 'coarse',
  loam: 'medium',
  'silt loam': 'medium',
  silt: 'medium',
  'sandy clay loam': 'medium',
  'clay loam': 'fine',
  'silty clay loam': 'fine',
  'sandy clay': 'fine',
  'silty clay': 'fine',
  clay: 'fine',
};

/** Coarse, medium or fine. [common practice, no source] */
export const gradeOf = (texture: TextureClass): Grade => grades[texture];

const about = described('texture-only');
const UNIT = 'g CaCO3/kg/pH';

/** The pedotransfer function with organic carbon assumed: enough for half a dose and a new test, no more. */
export const textureOnly: RequirementMethod = {
  ...about,
  kind: 'texture',
  direction: 'both',
  read(input, recorder) {
    const { texture } = input;
    if (texture === undefined) return NOT_GIVEN;
    if (input.medium !== 'mineral') return NOT_MINERAL;
    const sized = texture.basis === 'measured' || texture.basis === 'jar';
    const clay = sized ? texture.parts.clay * 100 : assumedClay[grades[texture.name]];
    const value = curtinTrolove(ASSUMED_CARBON, clay);
    if (recorder)
      recordPublished(recorder, textureOnly, {
        formula: '0.50045 (1 + 1.02 OC + 0.058 clay)',
        terms: [
          { symbol: 'OC', value: ASSUMED_CARBON, unit: '%', origin: 'choice' },
          { symbol: 'clay', value: clay, unit: '%', origin: sized ? 'entered' : 'choice' },
        ],
        value,
        unit: UNIT,
      });
    return impliedByCapacity(
      textureOnly,
      input,
      { value, unit: UNIT, capacity: value * 1e-3, from: 4.5, to: 6.5 },
      recorder,
    );
  },
};
