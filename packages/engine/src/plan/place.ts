import type { SoilTest } from '../evidence/soil-test.ts';
import type { Weather, YearlyInputs } from '../forecast/types.ts';
import type { Product } from '../materials/material.ts';
import type { Medium, Texture } from '../soil/soil.ts';
import type { CubicMetre, Fraction, IsoDate, KgPerM3, Metre, MolPerM3, Ph, SquareMetre } from '../units/si.ts';

export type PlaceKind = 'bed' | 'plot' | 'container';

/** Whether material can be mixed in, which decides the limit for one application. */
export type Situation = 'open ground' | 'around plants' | 'lawn' | 'container';

/** A plant's pH range from the almanac, or the gardener's own figures. */
export interface PlantRange {
  readonly key: string;
  readonly name: string;
  readonly low: Ph;
  readonly high: Ph;
  /** Cautious tolerance limits; undefined when no source gives them. */
  readonly toleratesLow?: Ph;
  readonly toleratesHigh?: Ph;
  readonly aim: Ph;
  readonly reaction: 'acid-loving' | 'neutral' | 'lime-loving' | 'lime-tolerant';
  /** Range for pots, when a container source gives one. */
  readonly container?: { readonly low: Ph; readonly high: Ph };
  readonly sources: readonly string[];
  readonly basis: 'read' | 'memory' | 'derived' | 'judgement';
}

export interface Water {
  readonly alkalinity: MolPerM3;
  /** Depth of water given in a year. */
  readonly perYear?: Metre;
}

export interface PastApplication {
  readonly date: IsoDate;
  readonly material: string;
  /** kg CaCO3 equivalent per m², signed, as it will act. */
  readonly currency: number;
}

/** One growing place, everything in SI and already checked. */
export interface Place {
  readonly id: string;
  readonly name: string;
  readonly kind: PlaceKind;
  readonly situation: Situation;
  readonly medium: Medium;
  readonly area: SquareMetre;
  /** Depth that will be treated. */
  readonly depth: Metre;
  /** Medium in all pots of this entry together (containers). */
  readonly volume?: CubicMetre;
  readonly texture?: Texture;
  readonly organicMatter?: Fraction;
  readonly bulkDensity?: KgPerM3;
  readonly coarseFragments?: Fraction;
  readonly plants: readonly PlantRange[];
  /** The gardener's own target, which overrides the plants'. */
  readonly target?: { readonly low: Ph; readonly high: Ph; readonly aim?: Ph };
  /** Diseases seen here, by key or name, that may set the target. */
  readonly diseases?: readonly string[];
  readonly tests: readonly SoilTest[];
  readonly applications: readonly PastApplication[];
  readonly water?: Water;
  /** Feeds, crops, compost: what pushes the pH every year besides the applications and the water. */
  readonly yearly?: YearlyInputs;
  readonly nearOpenWater?: boolean;
  readonly childrenOrPets?: boolean;
  readonly certifiedOrganic?: boolean;
}

export interface Settings {
  readonly today: IsoDate;
  /** Chance of passing the safe end that the first application may carry; default 0.05. */
  readonly overshootChance: number;
  readonly region?: string;
  readonly hemisphere: 'north' | 'south';
  /** Mean soil temperature at 10 cm of each month, January first, °C; undefined when unknown. */
  readonly soilTemperature?: readonly number[];
  /** Climate and rain for the forecast; a maritime climate is assumed without it. */
  readonly weather?: Weather;
  /** Published fineness system used for liming products, default `OH`. */
  readonly finenessSystem: string;
}

export interface Garden {
  readonly name: string;
  readonly places: readonly Place[];
  readonly products: readonly Product[];
  readonly settings: Settings;
  readonly currencySymbol: string;
}
