import type { Ph } from '../units/si.ts';
import { described, publishedSoilMass } from './described.ts';
import { implied } from './implied.ts';
import type { RequirementMethod } from './method.ts';
import { beyond, NOT_GIVEN, NOT_MINERAL, TOO_CLOSE } from './outcome.ts';
import { LB_PER_ACRE } from './published-units.ts';
import { recordPublished } from './record.ts';
import { targetWithin } from './targets.ts';

const LB_PER_SHORT_TON = 2000;

/**
 * Share of the exchange sites that hold acid, from the soil pH: `pH = 7.79 - 5.55 H + 2.27 H²`, the smaller root.
 *
 * @param ph 4.4 to 7.79; NaN below, where the equation has no root; never below 0
 * @source AdamsEvans1962 (from memory)
 */
export const adamsEvansH = (ph: Ph): number =>
  Math.max(0, (5.55 - Math.sqrt(5.55 * 5.55 - 4 * 2.27 * (7.79 - ph))) / (2 * 2.27));

/**
 * Adams-Evans: `8000 (8.00 - B)/H1 x (H1 - H2) x k`, lb CaCO3 per acre of 2,000,000 lb soil; never below 0.
 *
 * @param ph present pH in water
 * @param bufferPh Adams-Evans buffer pH, below 8.00
 * @param target normally 5.5 to 6.5
 * @param allowance the printed 1.5, or 1 for what the chemistry asks
 * @source AdamsEvans1962 (from memory), form confirmed by Huluka2007
 */
export function adamsEvansLbPerAcre(ph: Ph, bufferPh: Ph, target: Ph, allowance = 1.5): number {
  const now = adamsEvansH(ph);
  return now === 0 ? 0 : Math.max(0, ((8000 * (8 - bufferPh)) / now) * (now - adamsEvansH(target)) * allowance);
}

const about = described('adams-evans');
const OUTSIDE = beyond(about.domain);
const SOIL_MASS = publishedSoilMass(about.id);
const UNIT = 'lb CaCO3/acre';
const HIGHEST_CEC = 0.13;
const MOST = 5 * LB_PER_SHORT_TON;

export const adamsEvans: RequirementMethod = {
  ...about,
  kind: 'buffer pH',
  direction: 'raise',
  read(input, recorder) {
    const { buffer, cec } = input.test;
    if (buffer?.method !== 'adams-evans') return NOT_GIVEN;
    if (input.medium === 'organic' || input.medium === 'soilless') return NOT_MINERAL;
    const ph = input.present.mean;
    const target = targetWithin(5.5, 6.5, input.targetPh, ph);
    if (target === undefined) return TOO_CLOSE;
    if (cec !== undefined && cec >= HIGHEST_CEC) return OUTSIDE;
    const value = adamsEvansLbPerAcre(ph, buffer.value, target, about.allowance);
    if (!(value < MOST)) return OUTSIDE;
    if (recorder)
      recordPublished(recorder, adamsEvans, {
        formula: '8000 (8.00 - B)/H1 x (H1 - H2) x k, with pH = 7.79 - 5.55 H + 2.27 H^2',
        terms: [
          { symbol: 'B', value: buffer.value, unit: 'Adams-Evans buffer pH', origin: 'entered' },
          { symbol: 'H1', value: adamsEvansH(ph), unit: '1', origin: 'choice' },
          { symbol: 'H2', value: adamsEvansH(target), unit: '1', origin: 'choice' },
          { symbol: 'k', value: about.allowance, unit: '1', origin: 'table', source: 'AdamsEvans1962' },
        ],
        value,
        unit: UNIT,
      });
    return implied(
      adamsEvans,
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
