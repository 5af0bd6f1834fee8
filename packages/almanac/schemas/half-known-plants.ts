import * as z from 'zod';
import { basis, list, optionalNumber, optionalText, sources, text } from './columns.ts';
import { row as plant } from './plants.ts';

/**
 * A plant of which nobody whom we read publishes a best range in the ground: only a range for pots, only the range of
 * ground where it is found growing, or both. None of the three can stand in for a best range.
 */
export const row = z.strictObject({
  key: plant.shape.key,
  name: text,
  also: list,
  botanical: text,
  family: text,
  group: plant.shape.group,
  /** Best range of a potting mix, by pour-through or saturated extract: medians where sources differ. */
  containerLow: optionalNumber,
  containerHigh: optionalNumber,
  /** Ground where it is found growing; survival, never a target. */
  foundLow: optionalNumber,
  foundHigh: optionalNumber,
  sources,
  basis,
  note: optionalText,
});
