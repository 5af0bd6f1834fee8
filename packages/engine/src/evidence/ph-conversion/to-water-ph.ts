import type { Recorder } from '../../derivation/derivation.ts';
import type { Ph } from '../../units/si.ts';
import type { PhMethod } from '../soil-test.ts';
import type { Conversion, ConversionFacts, Converted } from './converted.ts';
import { fromCalciumChloride } from './from-cacl2.ts';
import { fromPotassiumChloride } from './from-kcl.ts';
import {
  fromPaste,
  fromUnstated,
  fromWaterOneToOne,
  fromWaterOneToTwo,
  fromWaterOneToTwoAndAHalf,
} from './from-water.ts';
import { fromWaterOneToFive } from './from-water-1-5.ts';

const conversions: Partial<Record<PhMethod, Conversion>> = {
  'water-1:1': fromWaterOneToOne,
  'water-1:2': fromWaterOneToTwo,
  'water-1:2.5': fromWaterOneToTwoAndAHalf,
  'water-1:5': fromWaterOneToFive,
  'water-paste': fromPaste,
  'cacl2-0.01M': fromCalciumChloride,
  'kcl-1M': fromPotassiumChloride,
  unstated: fromUnstated,
};

const nothing: ConversionFacts = {};

/** True for pH of a potting medium, which stays on its own scale (UMASS_MEDIA). */
export const isMediaMethod = (method: PhMethod): boolean =>
  method === 'media-1:2' || method === 'media-extract' || method === 'pour-through';

/**
 * A pH of any method on the water scale (1:1 to 1:2.5), with the error of the conversion.
 *
 * @param ph value as read and how it was read
 * @param facts conductivity (S/m), clay and organic matter (fractions), when known
 * @returns undefined for potting-media methods, which have their own scale, and for CaCl2 in salty soil
 */
export function toWaterPh(
  ph: { readonly value: Ph; readonly method: PhMethod },
  facts: ConversionFacts = nothing,
  recorder?: Recorder,
): Converted | undefined {
  return conversions[ph.method]?.(ph.value, facts, recorder);
}
