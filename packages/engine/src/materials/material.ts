import type { Fraction, KgPerM3, Kilogram, Metre } from '../units/si.ts';

export type MaterialRole = 'liming' | 'acidifying' | 'neutral' | 'fertilizer' | 'organic';
export type MaterialForm = 'powder' | 'granule' | 'pellet' | 'crystal' | 'liquid' | 'bulk' | 'ash';

/** Share of a product that passes a screen: opening in metres, mass fraction finer. */
export interface Sieve {
  readonly opening: Metre;
  readonly passing: Fraction;
}

/** A product at hand: an almanac material with what its own label says. */
export interface Product {
  /** Almanac key of the material it is. */
  readonly material: string;
  readonly name: string;
  readonly role: MaterialRole;
  readonly form: MaterialForm;
  /** kg CaCO3 neutralised (positive) or acid given (negative) per kg as sold, before fineness and reaction. */
  readonly currency: number;
  /** Whether `currency` rests on the product's own label or analysis, or on the almanac's usual figure. */
  readonly currencyBasis: 'label' | 'assumed';
  readonly moisture: Fraction;
  readonly sieves?: readonly Sieve[];
  /** Fineness efficiency 0 to 1, from sieves, the label or the almanac's assumption. */
  readonly efficiency: Fraction;
  readonly efficiencyBasis: 'label' | 'sieves' | 'assumed' | 'not applicable';
  readonly calcium: Fraction;
  readonly magnesium: Fraction;
  /** Loose bulk density, for scoops; undefined when nobody measured it. */
  readonly density?: KgPerM3;
  readonly cautions: readonly string[];
  readonly bag?: { readonly mass: Kilogram; readonly price?: number };
  readonly onHand?: Kilogram;
  /** Almanac says never at home, with the caution code that explains it. */
  readonly refused?: string;
}
