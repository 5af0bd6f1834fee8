import type { Recorder } from '../derivation/derivation.ts';
import type { BufferCurve, Layer, PhEstimate } from '../soil/soil.ts';
import type { Ph } from '../units/si.ts';

/** 10 % and 90 % points of the normal distribution: the range printed holds the middle 80 %. */
const Z_80 = 1.2816;

export interface Requirement {
  /** Signed, kg CaCO3/m²; 0 when the pH is at the aim. */
  readonly best: number;
  /** Smaller and larger end of the middle 80 %, same sign as `best`. */
  readonly low: number;
  readonly high: number;
}

/**
 * Lime requirement, or acid requirement, from the buffer curve:
 * raising `LR = M (Q(T) − Q(pH))`, lowering `AR = −M (Q(pH) − Q(T) + C)`, with `Q(pH) = beta0 w sinh((pH − pm)/w)`.
 *
 * @param curve beta0 in kg CaCO3/kg/pH, carbonate store C in kg/kg
 * @param layer treated layer, M its dry soil mass in kg/m²
 * @param present pH in water with its error
 * @param aim target pH in water
 * All the acid is taken to act in the layer (eta = 1): the published sulfur rates that calibrate the curve already hold
 * what is lost, and a smaller dose with a retest is the safer reading.
 *
 * @source NELSU10 and LIU04 for the shape of the curve
 */
export function requirementOf(
  curve: BufferCurve,
  layer: Layer,
  present: PhEstimate,
  aim: Ph,
  recorder?: Recorder,
): Requirement {
  const { w, pm, beta0 } = curve;
  const here = w * Math.sinh((present.mean - pm) / w);
  const there = w * Math.sinh((aim - pm) / w);
  const raising = aim >= present.mean;
  const perKg = beta0 * Math.abs(there - here);
  const size = layer.mass * (perKg + (raising ? 0 : curve.carbonate));
  const best = raising ? size : -size;
  // First-order error: the capacity scales the whole, the present pH moves the starting point along the curve.
  const slope = Math.cosh((present.mean - pm) / w) / Math.max(Math.abs(there - here), 1e-9);
  const spread = Math.sqrt(curve.sdLog ** 2 + (slope * present.sd) ** 2);
  const factor = Math.exp(Z_80 * Math.min(spread, 2));
  if (recorder)
    recorder.step({
      symbol: 'D_need',
      title: raising
        ? 'Lime requirement of this bed, as pure calcium carbonate'
        : 'Acid requirement of this bed, as calcium carbonate equivalent',
      formula: raising
        ? 'D_need = M · beta0 · w · [sinh((T − pm)/w) − sinh((pH − pm)/w)]'
        : 'D_need = M · (beta0 · w · [sinh((pH − pm)/w) − sinh((T − pm)/w)] + C)',
      terms: [
        { symbol: 'M', value: layer.mass, unit: 'kg soil/m²', origin: 'step' },
        { symbol: 'beta0', value: beta0, unit: 'kg CaCO3/kg/pH', origin: 'step' },
        { symbol: 'pm', value: pm, unit: 'pH', origin: 'table', source: 'NELSU10' },
        { symbol: 'w', value: w, unit: 'pH', origin: 'table', source: 'LIU04' },
        { symbol: 'pH', value: present.mean, unit: 'pH', origin: 'step' },
        { symbol: 'T', value: aim, unit: 'pH', origin: 'step' },
        ...(raising
          ? []
          : ([{ symbol: 'C', value: curve.carbonate, unit: 'kg CaCO3/kg', origin: 'entered' }] as const)),
      ],
      value: size,
      unit: 'kg CaCO3/m²',
      sources: ['NELSU10', 'LIU04', 'SORREL'],
      basis: 'derived',
      note: `Middle 80 %: ${(size / factor).toPrecision(2)} to ${(size * factor).toPrecision(2)} kg CaCO3/m².`,
    });
  return { best, low: best / factor, high: best * factor };
}
