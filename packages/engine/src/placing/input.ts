import type { Product } from '../materials/material.ts';
import type { Place, PlantRange, Settings } from '../plan/place.ts';
import type { SquareMetre } from '../units/si.ts';

/** From the brightest to the darkest. */
export const LIGHTS = ['sun', 'part shade', 'shade'] as const;
export type Light = (typeof LIGHTS)[number];

/** A plant somebody wants to grow, and how much of it. */
export interface Wish {
  readonly plant: PlantRange;
  /** Area wanted in each of its seasons. */
  readonly area: SquareMetre;
  /** Seasons it is wanted in, from 1; all of them when left out. A plant that stays is there in every season. */
  readonly seasons?: readonly number[];
  /** Stays where it is planted; by the almanac's group of the plant when left out. */
  readonly stays?: boolean;
  /** Botanical family for the rotation; the almanac's when left out. */
  readonly family?: string;
  /** Least light it does well in; any when left out. */
  readonly light?: Light;
  /** `only` in pots, `never` in pots; either when left out. */
  readonly pots?: 'only' | 'never';
}

/** What the gardener has settled about one place. */
export interface PlaceRules {
  /** Id of the place. */
  readonly place: string;
  /** Light the place gets; any plant may go there when left out. */
  readonly light?: Light;
  /**
   * Perennials that stay, with the area they hold; the whole place when no area is given. When left out: those among the
   * place's own plants that stay, each with an equal share of the place. An empty list clears the place.
   */
  readonly stays?: readonly { readonly plant: PlantRange; readonly area?: SquareMetre }[];
  /** What must grow here; as much as fits when no area is given, in every season when none is named. */
  readonly fixed?: readonly {
    readonly plant: PlantRange;
    readonly area?: SquareMetre;
    readonly seasons?: readonly number[];
  }[];
  /** What grew here: 1 for the season before the first. A plant's key or a botanical family. */
  readonly history?: readonly { readonly grew: string; readonly yearsAgo: number }[];
}

export interface PlacingInput {
  readonly places: readonly Place[];
  readonly wishes: readonly Wish[];
  readonly rules?: readonly PlaceRules[];
  readonly seasons: 1 | 2 | 3;
  readonly products: readonly Product[];
  readonly settings: Settings;
  /** Smallest piece of ground that is given to a plant, m²; a tenth of a square metre or the smallest place when left out. */
  readonly piece?: SquareMetre;
}
