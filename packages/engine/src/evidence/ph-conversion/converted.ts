import type { Recorder } from '../../derivation/derivation.ts';
import type { Fraction, Ph, SiemensPerMetre } from '../../units/si.ts';

/** A pH put on the water scale. `sd` is the error of the conversion alone; the test's own error comes on top. */
export interface Converted {
  readonly mean: Ph;
  readonly sd: number;
}

/** What a conversion may lean on, when it is known. */
export interface ConversionFacts {
  readonly conductivity?: SiemensPerMetre | undefined;
  readonly clay?: Fraction | undefined;
  readonly organicMatter?: Fraction | undefined;
}

/** One way of reading pH, brought to the water scale; `undefined` when it would mislead. */
export type Conversion = (value: Ph, facts: ConversionFacts, recorder?: Recorder) => Converted | undefined;
