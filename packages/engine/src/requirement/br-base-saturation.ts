import type { SoilTest } from '../evidence/soil-test.ts';
import { described } from './described.ts';
import { implied } from './implied.ts';
import type { RequirementMethod } from './method.ts';
import { CEC_UNCLEAR, LIMY, NOT_GIVEN, NOT_MINERAL, TOO_CLOSE } from './outcome.ts';
import { TONNE_PER_HECTARE } from './published-units.ts';
import { recordPublished } from './record.ts';
import { nearestTarget } from './targets.ts';
import { MEQ_PER_100_CM3, scoopDensity } from './volume-acidity.ts';

/**
 * Brazil: `CEC (V2 - V1)/100`, t/ha of fully effective lime to 20 cm; never below 0.
 *
 * @param cec at pH 7, cmol_c/dm³
 * @param v1 present base saturation, per cent
 * @param v2 wanted base saturation, per cent
 * @source BR-portal (read)
 */
export const baseSaturationTonnePerHectare = (cec: number, v1: number, v2: number): number =>
  Math.max(0, (cec * (v2 - v1)) / 100);

/** Base saturation as printed, else the bases over the CEC; undefined when neither can be had. */
function saturationOf(test: SoilTest, cec: number): number | undefined {
  if (test.baseSaturation !== undefined) return test.baseSaturation;
  const { calcium, magnesium } = test;
  if (calcium === undefined || magnesium === undefined) return undefined;
  return (calcium + magnesium + (test.potassium ?? 0) + (test.sodium ?? 0)) / cec;
}

const about = described('br-base-saturation');
const DEPTH = 0.2;
const UNIT = 't/ha, 20 cm, to full saturation';
/** A CEC measured at pH 7 is full at pH 7: its definition gives the target, so no saturation has to be chosen. */
const FULL = [7] as const;

export const brBaseSaturation: RequirementMethod = {
  ...about,
  kind: 'base saturation',
  direction: 'raise',
  read(input, recorder) {
    const { cec, cecBasis, carbonate } = input.test;
    if (cec === undefined) return NOT_GIVEN;
    const saturation = saturationOf(input.test, cec);
    if (saturation === undefined) return NOT_GIVEN;
    if (cecBasis !== 'pH 7' && cecBasis !== 'summed cations') return CEC_UNCLEAR;
    if (input.medium === 'organic' || input.medium === 'soilless') return NOT_MINERAL;
    if (carbonate !== undefined && carbonate > 0) return LIMY;
    const target = nearestTarget(FULL, input.targetPh, input.present.mean);
    if (target === undefined) return TOO_CLOSE;
    const density = scoopDensity(input);
    const byVolume = (cec * density) / MEQ_PER_100_CM3;
    const value = baseSaturationTonnePerHectare(byVolume, saturation * 100, 100);
    if (recorder)
      recordPublished(recorder, brBaseSaturation, {
        formula: 'CEC (V2 - V1)/100',
        terms: [
          { symbol: 'CEC', value: byVolume, unit: 'cmolc/dm3', origin: 'entered' },
          { symbol: 'V1', value: saturation * 100, unit: '%', origin: 'entered' },
          { symbol: 'V2', value: 100, unit: '%, full at pH 7 by definition', origin: 'choice' },
        ],
        value,
        unit: UNIT,
      });
    return implied(
      brBaseSaturation,
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
