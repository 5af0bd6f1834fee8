import * as z from 'zod';
import { basis, list, optionalNumber, optionalText, sources, text, yesNo } from './columns.ts';

/** Diseases that follow the pH: when they are worse, which pH holds them down, and how far that can be trusted. */
export const row = z.strictObject({
  key: text,
  name: text,
  /** Words in a plant's name, or `family:` and its family. */
  hosts: list,
  worse: z.enum(['sour', 'limy', 'hump', 'none']),
  keepAbove: optionalNumber,
  keepBelow: optionalNumber,
  /** A trial that was worst in the middle: least at low and high, most at the peak. */
  trialLow: optionalNumber,
  trialPeak: optionalNumber,
  trialHigh: optionalNumber,
  /** What may be said on the safe side of the limit. */
  quietened: optionalText,
  reliability: text,
  /** Whether it may set the target of a bed where it is present. */
  setsTarget: yesNo,
  sources,
  basis,
  note: optionalText,
});
