import { errorFunction } from 'simple-statistics';
import type { Recorder } from '../derivation/derivation.ts';
import type { BufferCurve, PhEstimate } from '../soil/soil.ts';
import type { KgPerM2, Ph } from '../units/si.ts';

/** Eight-point Gauss-Legendre rule on [-1, 1] (Abramowitz & Stegun, Handbook of Mathematical Functions, table 25.4). */
const NODES = [
  -0.960289856497536, -0.796666477413627, -0.525532409916329, -0.18343464249565, 0.18343464249565, 0.525532409916329,
  0.796666477413627, 0.960289856497536,
] as const;
const WEIGHTS = [
  0.101228536290376, 0.222381034453374, 0.313706645877887, 0.362683783378362, 0.362683783378362, 0.313706645877887,
  0.222381034453374, 0.101228536290376,
] as const;
/** Beyond four standard deviations the normal density no longer counts for a chance of a few per cent. */
const FAR = 4;
const SQRT_2PI = Math.sqrt(2 * Math.PI);

export const normalChance = (z: number): number => 0.5 * (1 + errorFunction(z / Math.SQRT2));

/** The question "does this dose pass the safe end?" for one bed, made ready to be asked of many doses. */
export interface Risk {
  /** Chance that the bed lies beyond the safe end already, without any dose. */
  readonly already: number;
  /** Chance that `dose` (kg CaCO3 per m², a size, not a sign) ends beyond the safe end. */
  chance(dose: KgPerM2): number;
}

/**
 * Chance of passing the safe end of the range, over the errors of present pH (normal) and buffer capacity (log-normal).
 * `P = P(pH0 beyond) + ∫ φ(z) Φ((ln(x/(M·room(z))) − ln beta0)/sdLog) dz`, x the dose, M the layer's soil mass,
 * room(z) the curve's rise from pH0 = mean + z·sd to the safe end for a unit beta0.
 *
 * @param curve buffer curve, kg CaCO3/kg
 * @param present present pH and its standard deviation (> 0)
 * @param safeEnd pH that must not be passed
 * @param mass dry soil in the treated layer, kg/m² (> 0)
 * @param direction `raise` guards the high end, `lower` the low end
 * @source SORREL for the rule; the curve is `docs/model.md`
 */
export function overshootRisk(
  curve: BufferCurve,
  present: PhEstimate,
  safeEnd: Ph,
  mass: KgPerM2,
  direction: 'raise' | 'lower',
): Risk {
  const sign = direction === 'raise' ? 1 : -1;
  const { w, pm } = curve;
  const end = w * Math.sinh((safeEnd - pm) / w);
  const sd = Math.max(present.sd, 1e-6);
  const zEnd = (sign * (safeEnd - present.mean)) / sd;
  const already = 1 - normalChance(zEnd);
  const top = Math.min(zEnd, FAR);
  const half = (top + FAR) / 2;
  const middle = (top - FAR) / 2;
  const logBeta = Math.log(curve.beta0);
  // A store of carbonate must be spent before acid can lower the pH, so it adds to the room on that side only.
  const store = direction === 'lower' ? curve.carbonate : 0;
  const logRooms = new Float64Array(8);
  const shares = new Float64Array(8);
  if (half > 0)
    for (let i = 0; i < 8; i++) {
      const z = middle + half * (NODES[i] as number);
      const ph = present.mean + sign * z * sd;
      const room = sign * (end - w * Math.sinh((ph - pm) / w));
      logRooms[i] = room > 0 ? Math.log(room) : Number.NEGATIVE_INFINITY;
      shares[i] = ((WEIGHTS[i] as number) * half * Math.exp(-0.5 * z * z)) / SQRT_2PI;
    }
  return {
    already,
    chance(dose) {
      let sum = already;
      const x = dose / mass - store;
      if (x > 0 && half > 0) {
        const logUnit = Math.log(x) - logBeta;
        for (let i = 0; i < 8; i++)
          sum += (shares[i] as number) * normalChance((logUnit - (logRooms[i] as number)) / curve.sdLog);
      }
      return Math.min(1, sum);
    },
  };
}

/**
 * Largest dose up to `most` whose chance of passing the safe end is at most `chance`.
 *
 * @param risk from `overshootRisk`
 * @param most the dose nobody wants to exceed anyway, kg CaCO3/m²
 * @param chance allowed chance, 0 to 1 (exclusive)
 * @returns kg CaCO3/m², 0 when the bed may be beyond the end already; its chance lies within 2 % (relative) below the allowed one
 */
export function largestSafeDose(risk: Risk, most: KgPerM2, chance: number, recorder?: Recorder): KgPerM2 {
  let dose = most;
  if (risk.already >= chance) dose = 0;
  else if (most > 0 && risk.chance(most) > chance) dose = boundary(risk, most, chance);
  if (recorder)
    recorder.step({
      symbol: 'D_safe',
      title: 'Largest first application with an acceptable chance of passing the safe end',
      formula: 'P(pH after D_safe beyond the safe end) <= p_max, over the errors of present pH and buffer capacity',
      terms: [
        { symbol: 'D_need', value: most, unit: 'kg CaCO3/m²', origin: 'step' },
        { symbol: 'p_max', value: chance, unit: 'chance', origin: 'choice' },
      ],
      value: dose,
      unit: 'kg CaCO3/m²',
      sources: ['SORREL'],
      basis: 'derived',
      note: `The chance at this dose is ${risk.chance(dose).toFixed(3)}.`,
    });
  return dose;
}

/** A dose is close enough to the boundary when its chance is within 2 % of the allowed one, on the safe side. */
const CLOSE = 0.02;

/** The dose at which the chance is reached, from below; secant steps on logarithms, where the chance is nearly straight, kept inside a bracket. */
function boundary(risk: Risk, most: number, chance: number): number {
  const over = (logDose: number) => Math.log(risk.chance(Math.exp(logDose)) / chance) + CLOSE / 2;
  let high = Math.log(most);
  let atHigh = over(high);
  let low = high;
  let atLow = atHigh;
  while (atLow > 0) {
    high = low;
    atHigh = atLow;
    // The chance falls at least as steeply as the dose there, so this step lands near the boundary or below it.
    low -= Math.min(2, 0.1 + atLow / 2);
    atLow = over(low);
    if (low < Math.log(most) - 10) return 0;
  }
  for (let i = 0; i < 30 && atLow < -CLOSE / 2 && high - low > 1e-4; i++) {
    const straight = low - (atLow * (high - low)) / (atHigh - atLow);
    const middle = Math.min(Math.max(straight, low + 0.05 * (high - low)), high - 0.05 * (high - low));
    const atMiddle = over(middle);
    if (atMiddle > 0) {
      high = middle;
      atHigh = atMiddle;
    } else {
      low = middle;
      atLow = atMiddle;
    }
  }
  return Math.exp(low);
}
