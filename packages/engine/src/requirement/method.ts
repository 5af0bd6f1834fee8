import type { Recorder } from '../derivation/derivation.ts';
import type { Message } from '../derivation/message.ts';
import type { SoilTest } from '../evidence/soil-test.ts';
import type { Layer, Medium, PhEstimate, Texture } from '../soil/soil.ts';
import type { Fraction, KgPerM2, Metre, Ph } from '../units/si.ts';

/**
 * Independent kinds of evidence. Two methods that read the same laboratory number are two opinions on
 * one fact, so the reconciler lets only the fittest of a kind speak and shows the others beside it.
 */
export type EvidenceKind =
  | 'response' // the bed's own answer to an earlier dose
  | 'capacity' // measured lime buffer capacity
  | 'printed rate'
  | 'buffer pH'
  | 'acidity'
  | 'aluminium'
  | 'base saturation'
  | 'cec'
  | 'texture and organic matter'
  | 'texture'
  | 'medium'; // soilless mixes, by volume

/** Everything a method may read. All tests are of one place; `present` is on the water scale. */
export interface MethodInput {
  readonly present: PhEstimate;
  readonly targetPh: Ph;
  readonly layer: Layer;
  readonly medium: Medium;
  readonly test: SoilTest;
  readonly texture?: Texture;
  /** Organic carbon, kg/kg, with the conversion already made. */
  readonly organicCarbon?: Fraction;
  /** Region the person gardens in or the laboratory serves. */
  readonly region?: string;
}

export interface Reading {
  readonly method: string;
  readonly kind: EvidenceKind;
  /** ln of beta0 of the buffer curve (kg CaCO3/kg/pH), already put on the bed's own layer. */
  readonly logBeta0: number;
  readonly sdLog: number;
  /** Part of `sdLog` that is the calibration's own, before the error of the pH: decides which reading of a kind speaks. */
  readonly calibrationSd?: number;
  /** The method's own figure in pure CaCO3 for the bed's layer, to the method's own target, allowance k taken out. */
  readonly pure: KgPerM2;
  readonly methodTargetPh: Ph;
  /** The method's figure as a handbook user would see it. */
  readonly published: { readonly value: number; readonly unit: string };
}

export type MethodOutcome =
  | { readonly state: 'reading'; readonly reading: Reading }
  /** The evidence it needs was not given: silent. */
  | { readonly state: 'not given' }
  /** Given, but outside what the publication covers, or printed as zero: said with the reason. */
  | { readonly state: 'outside'; readonly reason: Message };

export interface RequirementMethod {
  readonly id: string;
  readonly title: string;
  readonly kind: EvidenceKind;
  readonly direction: 'raise' | 'lower' | 'both';
  /** Where the calibration was made; empty when it is general chemistry. */
  readonly regions: readonly string[];
  /** Depth the published rate is for; `null` when the method works per mass of soil. */
  readonly referenceDepth: Metre | null;
  /** Allowance for coarse or slow limestone already inside the published rate (k). */
  readonly allowance: number;
  /** Standard deviation of ln beta0 when the region matches, and when it does not. */
  readonly sdLog: { readonly matching: number; readonly foreign: number };
  readonly domain: string;
  readonly sources: readonly string[];
  readonly basis: 'read' | 'memory' | 'derived';
  read(input: MethodInput, recorder?: Recorder): MethodOutcome;
}
