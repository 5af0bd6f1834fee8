import type { Derivation } from '../derivation/derivation.ts';
import type { Message } from '../derivation/message.ts';
import type { Kilogram, Ph, SquareMetre } from '../units/si.ts';
import type { Move } from './moves.ts';
import type { SplitBed } from './split-bed.ts';

/** What a way of placing asks of the gardener. */
export interface Figures {
  /** Pure CaCO3 equivalent moved, raising and lowering alike, kg. */
  readonly currency: Kilogram;
  /** Lime, sulfur and the like as sold, kg. */
  readonly material: Kilogram;
  /** By the bags at hand and to buy; undefined when a price is missing. */
  readonly money?: number;
  /** Until the last place is ready. */
  readonly months: number;
  /** How many places are moved. */
  readonly places: number;
  /** Area times seasons of wishes that are not met, m². */
  readonly unmet: SquareMetre;
}

export interface Growing {
  readonly plant: string;
  readonly key: string;
  readonly area: SquareMetre;
  /** Stands here for years: it was here before, or stays once planted. */
  readonly stays: boolean;
  readonly fixed: boolean;
}

export interface PlacedPlace {
  readonly place: string;
  readonly name: string;
  readonly present?: Ph;
  /** pH the place is brought to or left at; undefined when nobody tested it. */
  readonly ph?: Ph;
  readonly move: Move | undefined;
  /** What grows here, season by season. */
  readonly seasons: readonly (readonly Growing[])[];
  readonly reasons: readonly Message[];
}

/** A wish, or a part of it, that has no place. */
export interface Unmet {
  readonly plant: string;
  /** Seasons it is short in, from 1. */
  readonly seasons: readonly number[];
  /** Largest area short in one season. */
  readonly area: SquareMetre;
  /** Why, the headline first. */
  readonly reasons: readonly Message[];
}

/** Plants that must be in one place and share no pH there. */
export interface Clash {
  readonly place: string;
  readonly plants: readonly string[];
  readonly split: SplitBed;
  readonly messages: readonly Message[];
}

/** The next best way, and what the choice saves against it. */
export interface RunnerUp {
  readonly figures: Figures;
  /** Runner-up less the choice; never negative in currency. */
  readonly saved: Omit<Figures, 'money'> & { readonly money?: number };
  readonly places: readonly PlacedPlace[];
  readonly messages: readonly Message[];
}

export interface Arrangement {
  /** True when no way of placing moves less soil; false when the solver was stopped before it could prove that. */
  readonly proven: boolean;
  /** How far the choice may be from the optimum, kg CaCO3; 0 when proven. */
  readonly gap: Kilogram;
  readonly places: readonly PlacedPlace[];
  readonly figures: Figures;
  /** Nothing else differs enough to be told when it is undefined; then `messages` say so. */
  readonly runnerUp?: RunnerUp;
  /** Placing each plant in turn where it costs least, for comparison. */
  readonly greedy: Figures;
  readonly unmet: readonly Unmet[];
  readonly clashes: readonly Clash[];
  /** Which of the wishes must not share a place, and why. */
  readonly apart: readonly Message[];
  readonly messages: readonly Message[];
  readonly derivation?: Derivation;
}
