import type { Recorder } from '../derivation/derivation.ts';
import { capacityByCarbonAndClay } from '../soil/least-capacity.ts';
import { described } from './described.ts';
import { impliedByCapacity } from './implied.ts';
import type { MethodInput, MethodOutcome, RequirementMethod } from './method.ts';
import { beyond, NOT_GIVEN, NOT_MINERAL } from './outcome.ts';
import { CACO3_PER_MOL } from './published-units.ts';
import { recordPublished } from './record.ts';
import { serves } from './region.ts';

/** g CaCO3/kg in 1 cmol_c/kg. */
const CMOL = CACO3_PER_MOL * 10;
const PER_CENT = 100;
const GRAM = 1e-3;
const MOST_CARBON = 6;
/** CEC up to which a sand counts as low in activity, mol_c/kg. [judgement] */
const LOW_CEC = 0.03;

/**
 * Curtin and Trolove: `0.50045 (1 + 1.02 OC + 0.058 clay)` g CaCO3/kg/pH. The default, because it takes both carbon
 * and clay and comes from temperate soil.
 *
 * @param oc organic carbon, per cent, 0 to 6
 * @param clay per cent, 0 to 100
 * @source CurtinTrolove2013 through HB-PTF (read): New Zealand, 30 soils, R² 0.83
 */
export const curtinTrolove = (oc: number, clay: number): number =>
  capacityByCarbonAndClay(oc / PER_CENT, clay / PER_CENT) / GRAM;

/**
 * Wong: `0.50045 (0.73 + 0.66 OC)` g CaCO3/kg/pH, for sand low in activity or highly weathered ground.
 *
 * @param oc organic carbon, per cent, 0 to 6
 * @source Wong2013 through HB-PTF (read): Western Australia, 89 soils, R² 0.89
 */
export const wong = (oc: number): number => CMOL * (0.73 + 0.66 * oc);

const isLowActivitySand = (input: MethodInput): boolean => {
  const name = input.texture?.name;
  if (name !== 'sand' && name !== 'loamy sand') return false;
  const { cec } = input.test;
  return (cec !== undefined && cec <= LOW_CEC) || serves(ptfWong, input);
};

function read(
  method: RequirementMethod,
  input: MethodInput,
  value: number,
  formula: string,
  recorder?: Recorder,
): MethodOutcome {
  if (recorder)
    recordPublished(recorder, method, {
      formula,
      terms: [
        { symbol: 'OC', value: (input.organicCarbon ?? 0) * PER_CENT, unit: '%', origin: 'entered' },
        { symbol: 'clay', value: (input.texture?.parts.clay ?? 0) * PER_CENT, unit: '%', origin: 'entered' },
      ],
      value,
      unit: UNIT,
    });
  return impliedByCapacity(method, input, { value, unit: UNIT, capacity: value * GRAM, from: 4.5, to: 6.5 }, recorder);
}

const curtin = described('ptf-curtin-trolove');
const OUTSIDE = beyond(curtin.domain);
const UNIT = 'g CaCO3/kg/pH';

export const ptfCurtinTrolove: RequirementMethod = {
  ...curtin,
  kind: 'texture and organic matter',
  direction: 'both',
  read(input, recorder) {
    const { texture, organicCarbon } = input;
    if (texture === undefined || organicCarbon === undefined) return NOT_GIVEN;
    if (input.medium !== 'mineral') return NOT_MINERAL;
    const oc = organicCarbon * PER_CENT;
    if (oc > MOST_CARBON + 1e-9) return OUTSIDE;
    const value = curtinTrolove(oc, texture.parts.clay * PER_CENT);
    return read(ptfCurtinTrolove, input, value, '0.50045 (1 + 1.02 OC + 0.058 clay)', recorder);
  },
};

/** Silent on every soil but low-activity sand. */
export const ptfWong: RequirementMethod = {
  ...described('ptf-wong'),
  kind: 'texture and organic matter',
  direction: 'both',
  read(input, recorder) {
    const { organicCarbon } = input;
    if (organicCarbon === undefined || input.medium !== 'mineral' || !isLowActivitySand(input)) return NOT_GIVEN;
    const oc = organicCarbon * PER_CENT;
    if (oc > MOST_CARBON + 1e-9) return OUTSIDE;
    return read(ptfWong, input, wong(oc), '0.50045 (0.73 + 0.66 OC)', recorder);
  },
};
