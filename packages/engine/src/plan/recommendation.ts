import type { Derivation } from '../derivation/derivation.ts';
import type { Message } from '../derivation/message.ts';
import type { Learned } from '../learning/types.ts';
import type { Product } from '../materials/material.ts';
import type { Reconciled } from '../requirement/reconcile-types.ts';
import type { Layer, PhEstimate } from '../soil/soil.ts';
import type { IsoDate, KgPerM2, Kilogram, Ph } from '../units/si.ts';

export type Decision =
  | 'leave alone'
  | 'raise'
  | 'lower'
  /** The soil cannot in practice be moved that far (free lime, sodium, far above capacity). */
  | 'not practical'
  /** The plants want different ground; they cannot share this place, or this place will not do. */
  | 'grow something else'
  /** Not enough is known for a safe dose. */
  | 'find out first';

export interface Target {
  readonly low: Ph;
  readonly high: Ph;
  readonly aim: Ph;
  /** Plants whose ranges share no pH, in pairs; empty when they can live together. */
  readonly conflicts: readonly { readonly a: string; readonly b: string }[];
  readonly basis: 'plants' | 'own figures' | 'default';
}

export interface Application {
  /** 1 for the first; later ones happen only if the retest before them still asks for it. */
  readonly number: number;
  readonly product: Product;
  /** Total for the place, as sold. */
  readonly mass: Kilogram;
  /** Per m² of bed, as sold; for containers per m² is undefined and `perVolume` (kg/m³) is given. */
  readonly perArea?: KgPerM2;
  readonly perVolume?: number;
  /** Pure CaCO3 equivalent, signed, per m² (per m³ for containers). */
  readonly currency: number;
  readonly earliest: IsoDate;
  readonly latest: IsoDate;
  readonly onlyIfRetest: boolean;
  readonly how: readonly Message[];
}

export interface Recommendation {
  readonly place: string;
  readonly decision: Decision;
  /** Why, in order of weight; the first is the headline. */
  readonly reasons: readonly Message[];
  readonly present?: PhEstimate & { readonly date: IsoDate };
  /** What must be known about the reading: its season, age, conversion, tests that differ. */
  readonly notes: readonly Message[];
  readonly target: Target;
  readonly layer: Layer;
  readonly reconciled?: Reconciled;
  /** What this place's own record of doses and retests has taught. */
  readonly learned?: Learned;
  /** Pure CaCO3 equivalent to the aim, signed, kg/m² (kg/m³ for containers); `low` to `high` is the middle 80 %. */
  readonly requirement?: { readonly best: number; readonly low: number; readonly high: number };
  readonly applications: readonly Application[];
  /** Chance that the first application alone passes the safe end. */
  readonly overshootChance?: number;
  readonly retest?: { readonly earliest: IsoDate; readonly latest: IsoDate; readonly why: Message };
  readonly cautions: readonly Message[];
  readonly ask: readonly Message[];
  /** Plants of the almanac or of the garden that would suit the place as it is, when that is the better answer. */
  readonly instead: readonly string[];
  readonly derivation?: Derivation;
}

export interface ShoppingLine {
  readonly product: Product;
  readonly needed: Kilogram;
  readonly onHand: Kilogram;
  readonly buy: Kilogram;
  readonly bags?: number;
  readonly cost?: number;
}
