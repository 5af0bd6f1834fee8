import { described, publishedSoilMass } from './described.ts';
import { implied } from './implied.ts';
import type { RequirementMethod } from './method.ts';
import { beyond, NOT_GIVEN, NOT_MINERAL, TOO_CLOSE } from './outcome.ts';
import { SHORT_TON_PER_ACRE } from './published-units.ts';
import { recordPublished } from './record.ts';
import { smpBufferPh, smpSpread } from './smp-buffer.ts';
import { nearestTarget } from './targets.ts';

const TO_6 = { a: 49.3, b: 0.71 };
const TO_6_5 = { a: 60.4, b: 0.87 };
const TO_6_8 = { a: 71.4, b: 1.03 };
const equationFor = (target: TriStateTarget) => (target === 6 ? TO_6 : target === 6.5 ? TO_6_5 : TO_6_8);
export type TriStateTarget = 6 | 6.5 | 6.8;
const targets: readonly TriStateTarget[] = [6, 6.5, 6.8];

/**
 * Tri-State lime test index: short ton of ag-ground limestone per acre, 8 in, mineral soil; never below 0.
 *
 * @param lti lime test index, 10 x SMP buffer pH, 48 to 69
 * @param target 6.8, 6.5 or 6.0
 * @source TriState1995 (from memory)
 */
export function triStateShortTonPerAcre(lti: number, target: TriStateTarget): number {
  const { a, b } = equationFor(target);
  return Math.max(0, a - b * lti);
}

const about = described('smp-tristate');
const OUTSIDE = beyond(about.domain);
const SOIL_MASS = publishedSoilMass(about.id);
const UNIT = 'short ton/acre ag-ground, 8 in';

export const smpTristate: RequirementMethod = {
  ...about,
  kind: 'buffer pH',
  direction: 'raise',
  read(input, recorder) {
    const bufferPh = smpBufferPh(input);
    if (bufferPh === undefined) return NOT_GIVEN;
    if (input.medium === 'organic' || input.medium === 'soilless') return NOT_MINERAL;
    const lti = bufferPh * 10;
    if (!(lti > 48 - 1e-6 && lti < 69 + 1e-6)) return OUTSIDE;
    const target = nearestTarget(targets, input.targetPh, input.present.mean) as TriStateTarget | undefined;
    if (target === undefined) return TOO_CLOSE;
    const value = triStateShortTonPerAcre(lti, target);
    if (recorder)
      recordPublished(recorder, smpTristate, {
        formula: `${equationFor(target).a} - ${equationFor(target).b} LTI`,
        terms: [{ symbol: 'LTI', value: lti, unit: '10 x SMP buffer pH', origin: 'entered' }],
        value,
        unit: UNIT,
      });
    return implied(
      smpTristate,
      input,
      {
        value,
        unit: UNIT,
        rate: value * SHORT_TON_PER_ACRE,
        allowance: about.allowance,
        targetPh: target,
        soilMass: SOIL_MASS,
        spread: smpSpread(smpTristate, input),
      },
      recorder,
    );
  },
};
