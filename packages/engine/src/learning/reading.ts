import type { Reading } from '../requirement/method.ts';
import { baseContent } from '../soil/buffer-curve.ts';
import type { BufferCurve, Layer } from '../soil/soil.ts';
import type { Ph } from '../units/si.ts';
import { TAUGHT } from './resistance.ts';
import type { Resistance } from './types.ts';

export const OWN_RESPONSE = 'own-response';
/** However well a bed has answered, its reading is not surer than this (lime-requirement section 7, judgement). */
export const LEAST_SD = 0.15;

/**
 * What the bed's own answers say of its resistance, as one reading among the others.
 *
 * The reconciler weighs it against the readings the prior was made of, so the prior is taken out again:
 * `1/s² = 1/s_post² − 1/s_prior²`, `ln beta0 = s² (m_post/s_post² − m_prior/s_prior²)`. Prior and reading together then
 * give what was learned, after the cap of a factor 2 a retest. `logBeta0` can lie far out when the readings teach
 * little, with a wide `sdLog`; the figures to show, `pure` and `published`, are those of what was learned.
 *
 * @param target pH to which the requirement is worked out
 * @returns undefined when too little was learned
 * Source: dynamics section 7; lime-requirement section 7.
 */
export function ownResponse(
  resistance: Resistance,
  curve: BufferCurve,
  layer: Layer,
  present: Ph,
  target: Ph,
): Reading | undefined {
  const { prior, meanLog, taught } = resistance;
  if (!taught) return undefined;
  const sdLog = posteriorSd(resistance);
  const precision = 1 / sdLog ** 2 - 1 / prior.sdLog ** 2;
  const learned: BufferCurve = { ...curve, beta0: Math.exp(meanLog) };
  return {
    method: OWN_RESPONSE,
    kind: 'response',
    logBeta0: (meanLog / sdLog ** 2 - Math.log(prior.median) / prior.sdLog ** 2) / precision,
    sdLog: Math.max(LEAST_SD, Math.sqrt(1 / precision)),
    pure: (baseContent(learned, target) - baseContent(learned, present)) * layer.mass,
    methodTargetPh: target,
    published: { value: learned.beta0 * 1000, unit: 'g CaCO3/kg/pH' },
  };
}

/** A surprise can leave the posterior as wide as the prior; to be weighed at all it must be a little narrower. */
export const posteriorSd = ({ freeSdLog, prior }: Resistance): number => Math.min(freeSdLog, TAUGHT * prior.sdLog);
