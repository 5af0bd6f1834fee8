import type { Recorder } from '../derivation/derivation.ts';
import { curveShape } from '../soil/buffer-curve.ts';
import type { BufferCapacity, KgPerM2, Ph } from '../units/si.ts';
import type { MethodInput, MethodOutcome, Reading, RequirementMethod } from './method.ts';
import { PRINTED_ZERO } from './outcome.ts';
import { recordCapacity, recordFigure } from './record.ts';
import { calibrationSpread } from './region.ts';

const { pm, w } = curveShape;

/** Change of base content between two pH values for beta0 = 1: `w sinh((T - pm)/w) - w sinh((pH - pm)/w)`. [NELSU10] */
export const span = (from: Ph, to: Ph): number => w * (Math.sinh((to - pm) / w) - Math.sinh((from - pm) / w));

/** What a publication prints for this soil. */
export interface Figure {
  /** As a handbook user would see it. */
  readonly value: number;
  readonly unit: string;
  /** The same in kg/m², or in kg/kg when `soilMass` is 1. */
  readonly rate: number;
  /** k inside it. */
  readonly allowance: number;
  readonly targetPh: Ph;
  /** Soil it is meant for, kg/m²; 1 when the method works per kg of soil. */
  readonly soilMass: KgPerM2;
  /** Calibration spread, when the method's own does not apply. */
  readonly spread?: number | undefined;
}

/**
 * Turns a published rate into a reading of the bed's buffer curve: takes the allowance out, scales from the
 * publication's soil mass to the bed's, and solves for the beta0 that would need as much.
 *
 *     LR    = rate / k x bed soil mass / published soil mass          kg CaCO3/m²
 *     beta0 = LR / bed soil mass / (w sinh((T - pm)/w) - w sinh((pH - pm)/w))
 *     sd    = sqrt(calibration² + (sd of pH x cosh((pH - pm)/w) / span)²)
 *
 * The last line lets a reading over a small gap say little, because the pH's own error is then most of it.
 *
 * @returns `outside` when the publication prints nothing to apply
 */
export function implied(
  method: RequirementMethod,
  input: MethodInput,
  figure: Figure,
  recorder?: Recorder,
): MethodOutcome {
  const perKg = figure.rate / figure.allowance / figure.soilMass;
  if (!(perKg > 0)) return PRINTED_ZERO;
  const { mean, sd } = input.present;
  const gap = span(mean, figure.targetPh);
  const calibration = figure.spread ?? calibrationSpread(method, input);
  const fromPh = (sd * Math.cosh((mean - pm) / w)) / gap;
  const reading: Reading = {
    method: method.id,
    kind: method.kind,
    logBeta0: Math.log(perKg / gap),
    sdLog: Math.sqrt(calibration * calibration + fromPh * fromPh),
    calibrationSd: calibration,
    pure: perKg * input.layer.mass,
    methodTargetPh: figure.targetPh,
    published: { value: figure.value, unit: figure.unit },
  };
  if (recorder) recordFigure(recorder, method, input, figure, reading);
  return { state: 'reading', reading };
}

/** A buffer capacity that a method gives as such, and the stretch of pH over which it is a mean. */
export interface Capacity {
  readonly value: number;
  readonly unit: string;
  /** Mean capacity, kg CaCO3/kg/pH. */
  readonly capacity: BufferCapacity;
  readonly from: Ph;
  readonly to: Ph;
}

/**
 * Turns a mean buffer capacity into a reading: `beta0 = LBC (to - from) / span(from, to)`. It does not hang on
 * the present pH, so it reads the soil equally well upwards and downwards.
 */
export function impliedByCapacity(
  method: RequirementMethod,
  input: MethodInput,
  figure: Capacity,
  recorder?: Recorder,
): MethodOutcome {
  const { capacity, from, to } = figure;
  if (!(capacity > 0)) return PRINTED_ZERO;
  const calibration = calibrationSpread(method, input);
  const reading: Reading = {
    method: method.id,
    kind: method.kind,
    logBeta0: Math.log((capacity * (to - from)) / span(from, to)),
    sdLog: calibration,
    calibrationSd: calibration,
    pure: capacity * Math.max(0, input.targetPh - input.present.mean) * input.layer.mass,
    methodTargetPh: input.targetPh,
    published: { value: figure.value, unit: figure.unit },
  };
  if (recorder) recordCapacity(recorder, method, input, figure, reading);
  return { state: 'reading', reading };
}
