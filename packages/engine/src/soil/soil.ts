import type { TextureClass } from '../evidence/soil-test.ts';
import type { BufferCapacity, Fraction, KgPerM2, KgPerM3, Metre, Ph } from '../units/si.ts';

/** `mineral` ground soil; `organic` over 20 % organic matter; `mix` a raised-bed fill rich in compost; `soilless` peat, bark or coir. */
export type Medium = 'mineral' | 'organic' | 'mix' | 'soilless';

/** A figure with the spread it deserves. `sdLog` is the standard deviation of its natural logarithm. */
export interface LogEstimate {
  readonly median: number;
  readonly sdLog: number;
}

export interface PhEstimate {
  readonly mean: Ph;
  readonly sd: number;
}

/** The layer that is treated. */
export interface Layer {
  readonly depth: Metre;
  readonly bulkDensity: KgPerM3;
  /** Volume share of stones over 2 mm. */
  readonly coarseFragments: Fraction;
  /** Dry fine soil in the layer, kg per m² of bed: depth × bulkDensity × (1 − coarseFragments). */
  readonly mass: KgPerM2;
}

/**
 * The soil's resistance. Base content relative to the pH of least buffering:
 * `Q(pH) = beta0 · w · sinh((pH − pm)/w)`, kg CaCO3 per kg soil; while `carbonate` lasts the pH cannot
 * leave the plateau downwards, and lime cannot lift it above.
 */
export interface BufferCurve {
  /** Least buffer capacity (at pm), kg CaCO3/kg/pH. */
  readonly beta0: BufferCapacity;
  readonly sdLog: number;
  readonly pm: Ph;
  readonly w: number;
  /** Carbonate store, kg CaCO3 per kg soil. */
  readonly carbonate: Fraction;
  /** pH in water at which free carbonate holds the soil. */
  readonly plateau: Ph;
}

export interface TextureParts {
  readonly sand: Fraction;
  readonly silt: Fraction;
  readonly clay: Fraction;
}

export interface Texture {
  readonly name: TextureClass;
  readonly parts: TextureParts;
  /** `measured` sizes, or the middle of a class that was named or felt. */
  readonly basis: 'measured' | 'class' | 'jar' | 'feel';
}
