import { curveParameter } from '@sorrel/almanac/curve-parameters';
import type { BufferCapacity, Fraction, Ph } from '../units/si.ts';
import type { BufferCurve } from './soil.ts';

/** Shape shared by all soils until a bed has taught its own: least buffering at 5.6, width 1.6, plateau 7.9 (MODEL). */
export const curveShape = {
  pm: curveParameter('pm').value,
  w: curveParameter('w').value,
  plateau: curveParameter('plateau').value,
} as const;

/**
 * A buffer curve with the shared shape.
 *
 * @param beta0 least buffer capacity, kg CaCO3/kg/pH, over 0
 * @param sdLog standard deviation of ln beta0
 * @param carbonate free lime, kg CaCO3 per kg soil
 */
export const solidCurve = (beta0: BufferCapacity, sdLog: number, carbonate: Fraction = 0): BufferCurve => ({
  beta0,
  sdLog,
  carbonate,
  pm: curveShape.pm,
  w: curveShape.w,
  plateau: curveShape.plateau,
});

/**
 * Base content of the exchange complex against that at pm, without the carbonate store:
 * `Q(pH) = beta0·w·sinh((pH − pm)/w)`, kg CaCO3 per kg soil. Steeper below about pH 5, where aluminium buffers, and
 * above about 7.5; straight within 25 % from 4.5 to 6.7 (NELSU10, LIU04).
 */
export const baseContent = (curve: BufferCurve, ph: Ph): number =>
  curve.beta0 * curve.w * Math.sinh((ph - curve.pm) / curve.w);

/** pH at a base content: `pH(Q) = pm + w·asinh(Q/(beta0·w))`. The inverse of `baseContent`. */
export const phAt = (curve: BufferCurve, base: number): Ph =>
  curve.pm + curve.w * Math.asinh(base / (curve.beta0 * curve.w));

/** Buffer capacity at a pH, kg CaCO3/kg/pH: `beta(pH) = beta0·cosh((pH − pm)/w)`. Never below beta0. */
export const capacityAt = (curve: BufferCurve, ph: Ph): BufferCapacity =>
  curve.beta0 * Math.cosh((ph - curve.pm) / curve.w);

/** A limy soil reads up to 8.3 in an aired slurry; to the curve it stands on the plateau. */
const onCurve = (curve: BufferCurve, ph: Ph): Ph => (curve.carbonate > 0 && ph > curve.plateau ? curve.plateau : ph);

/**
 * Base to add (positive) or to take away (negative) for a change of pH, kg CaCO3 per kg soil: `Q(to) − Q(from)`.
 * Lime lifts no further than the plateau. Acid first eats the whole carbonate store, so lowering counts it in full.
 * That some pH is lost before the store is gone belongs to the forecast: it comes back.
 */
export function between(curve: BufferCurve, from: Ph, to: Ph): number {
  if (to >= from) {
    if (from >= curve.plateau) return 0;
    return baseContent(curve, to < curve.plateau ? to : curve.plateau) - baseContent(curve, from);
  }
  const start = onCurve(curve, from);
  if (to >= start) return 0;
  return baseContent(curve, to) - baseContent(curve, start) - curve.carbonate;
}

/**
 * pH after base is added (positive) or acid (negative), kg CaCO3 per kg soil, when all of it has reacted. The inverse of
 * `between`: lime stops at the plateau; acid leaves the pH alone until the carbonate store is eaten.
 */
export function forward(curve: BufferCurve, ph: Ph, base: number): Ph {
  if (base >= 0) {
    if (ph >= curve.plateau) return ph;
    const reached = phAt(curve, baseContent(curve, ph) + base);
    return Math.min(reached, curve.plateau);
  }
  if (-base <= curve.carbonate) return ph;
  return phAt(curve, baseContent(curve, onCurve(curve, ph)) + base + curve.carbonate);
}

/**
 * Least buffer capacity of the curve that needs `base` to go from one pH to the other. How every method's figure becomes
 * a reading of the one curve.
 *
 * @param base kg CaCO3 per kg soil, with the sign of `to − from`
 * @throws RangeError when both pH are the same
 */
export function leastCapacityThrough(
  base: number,
  from: Ph,
  to: Ph,
  shape: { readonly pm: Ph; readonly w: number } = curveShape,
): BufferCapacity {
  if (from === to) throw new RangeError('two different pH are needed');
  return base / (shape.w * (Math.sinh((to - shape.pm) / shape.w) - Math.sinh((from - shape.pm) / shape.w)));
}
