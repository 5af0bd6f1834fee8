import type { Ph } from '../units/si.ts';
import { described } from './described.ts';
import { implied } from './implied.ts';
import type { RequirementMethod } from './method.ts';
import { NOT_GIVEN, NOT_MINERAL, TOO_CLOSE } from './outcome.ts';
import { INCH, SHORT_TON_PER_ACRE } from './published-units.ts';
import { recordPublished } from './record.ts';
import { targetWithin } from './targets.ts';
import { acidityByVolume, scoopDensity } from './volume-acidity.ts';

/** pH of the buffer itself, where the ratio has no meaning. */
const SINGULAR = 6.6;
const DEPTH = 8 * INCH;

export type NcSoilClass = 'mineral' | 'mineral-organic' | 'organic';
/** Share of a dose that stops counting each month. */
const fading: Readonly<Record<NcSoilClass, number>> = { mineral: 0.08, 'mineral-organic': 0.16, organic: 0.16 };

/**
 * Share of the acidity that must go: `(T - pH)/(6.6 - pH)`; 0 when the pH is at the target.
 *
 * @param ph below 6.6
 * @param target at most 6.6
 * @returns NaN at or above pH 6.6 and for a target above it
 * @source NCDA-tab (read)
 */
export function ncFactor(ph: Ph, target: Ph): number {
  if (!(ph < SINGULAR) || !(target <= SINGULAR)) return Number.NaN;
  return Math.max(0, (target - ph) / (SINGULAR - ph));
}

/**
 * Share of an earlier dose still credited: `1 - rate x months`, not below 0.
 *
 * @source NCDA-tab: the 8 and 16 % a month were read; that they lower the credit from 100 % is from memory
 */
export const ncResidualShare = (soil: NcSoilClass, months: number): number => Math.max(0, 1 - fading[soil] * months);

/**
 * North Carolina: `AC (T - pH)/(6.6 - pH) - RC`, short ton of ag lime per acre, 8 in; never below 0.
 *
 * @param acidity AC, meq/100 cm³
 * @param residualCredit RC, short ton/acre still acting from an earlier dose
 * @source NCDA-tab (read)
 */
export const ncMehlichShortTonPerAcre = (acidity: number, ph: Ph, target: Ph, residualCredit = 0): number =>
  Math.max(0, acidity * ncFactor(ph, target) - residualCredit);

const about = described('nc-mehlich');
const UNIT = 'short ton/acre ag lime, 8 in';

/** The credit for earlier lime is left out here: it belongs to the bed's account, not to the soil's resistance. */
export const ncMehlich: RequirementMethod = {
  ...about,
  kind: 'acidity',
  direction: 'raise',
  read(input, recorder) {
    const acidity = acidityByVolume(input);
    if (acidity === undefined) return NOT_GIVEN;
    if (input.medium === 'soilless') return NOT_MINERAL;
    const ph = input.present.mean;
    const target = targetWithin(5, SINGULAR, input.targetPh, ph);
    if (target === undefined) return TOO_CLOSE;
    const value = ncMehlichShortTonPerAcre(acidity, ph, target);
    if (recorder)
      recordPublished(recorder, ncMehlich, {
        formula: 'AC (T - pH)/(6.6 - pH)',
        terms: [
          { symbol: 'AC', value: acidity, unit: 'meq/100 cm3', origin: 'entered' },
          { symbol: 'T', value: target, unit: 'pH', origin: 'choice' },
          { symbol: 'pH', value: ph, unit: 'pH', origin: 'entered' },
        ],
        value,
        unit: UNIT,
      });
    return implied(
      ncMehlich,
      input,
      {
        value,
        unit: UNIT,
        rate: value * SHORT_TON_PER_ACRE,
        allowance: about.allowance,
        targetPh: target,
        soilMass: DEPTH * scoopDensity(input),
      },
      recorder,
    );
  },
};
