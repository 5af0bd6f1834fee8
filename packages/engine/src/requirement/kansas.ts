import type { Ph } from '../units/si.ts';
import { described } from './described.ts';
import { implied } from './implied.ts';
import type { RequirementMethod } from './method.ts';
import { beyond, NOT_GIVEN, NOT_MINERAL, TOO_CLOSE } from './outcome.ts';
import { FURROW_SLICE_DENSITY, INCH, LB_PER_ACRE } from './published-units.ts';
import { recordPublished } from './record.ts';
import { smpBufferPh, smpSpread } from './smp-buffer.ts';
import { nearestTarget } from './targets.ts';

const TO_5_5 = { a: 6405, b: 1590, c: 98 };
const TO_6 = { a: 12810, b: 3180, c: 196 };
const TO_6_8 = { a: 25620, b: 6360, c: 391 };
const equationFor = (target: KansasTarget) => (target === 5.5 ? TO_5_5 : target === 6 ? TO_6 : TO_6_8);
export type KansasTarget = 5.5 | 6 | 6.8;
const targets: readonly KansasTarget[] = [5.5, 6, 6.8];

/**
 * Kansas: lb of effective calcium carbonate per acre; never below 0.
 *
 * @param bufferPh SMP buffer pH, 5.8 to 7.2
 * @param target 6.8, 6.0 or 5.5
 * @param inches treated depth
 * @source KSU-MF2586 (from memory)
 */
export function kansasLbPerAcre(bufferPh: Ph, target: KansasTarget, inches: number): number {
  const { a, b, c } = equationFor(target);
  return Math.max(0, (a - b * bufferPh + c * bufferPh * bufferPh) * inches);
}

const about = described('kansas');
const OUTSIDE = beyond(about.domain);
const UNIT = 'lb ECC/acre, at the bed depth';

export const kansas: RequirementMethod = {
  ...about,
  kind: 'buffer pH',
  direction: 'raise',
  read(input, recorder) {
    const bufferPh = smpBufferPh(input);
    if (bufferPh === undefined) return NOT_GIVEN;
    if (input.medium === 'organic' || input.medium === 'soilless') return NOT_MINERAL;
    if (!(bufferPh > 5.8 - 1e-9 && bufferPh < 7.2 + 1e-9)) return OUTSIDE;
    const target = nearestTarget(targets, input.targetPh, input.present.mean) as KansasTarget | undefined;
    if (target === undefined) return TOO_CLOSE;
    const inches = input.layer.depth / INCH;
    const value = kansasLbPerAcre(bufferPh, target, inches);
    if (recorder)
      recordPublished(recorder, kansas, {
        formula: `(${equationFor(target).a} - ${equationFor(target).b} B + ${equationFor(target).c} B^2) x inches`,
        terms: [
          { symbol: 'B', value: bufferPh, unit: 'SMP buffer pH', origin: 'entered' },
          { symbol: 'inches', value: inches, unit: 'in', origin: 'entered' },
        ],
        value,
        unit: UNIT,
      });
    return implied(
      kansas,
      input,
      {
        value,
        unit: UNIT,
        rate: value * LB_PER_ACRE,
        allowance: about.allowance,
        targetPh: target,
        soilMass: input.layer.depth * FURROW_SLICE_DENSITY,
        spread: smpSpread(kansas, input),
      },
      recorder,
    );
  },
};
