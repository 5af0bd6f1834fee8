import type { Ph } from '../units/si.ts';

/** A meter is set right when it shows each buffer within this (EPA_FIELD_PH). */
export const METER_AGREES = 0.05;

export interface ShownCheck {
  /** Largest distance from a buffer, pH units. */
  readonly worst: number;
  readonly good: boolean;
  /** Distance the meter shows between the two buffers as a share of the true one; undefined with one buffer. */
  readonly span?: number;
}

/**
 * Whether a meter reads its calibration buffers right, from the pH it shows. For a meter that shows millivolts see
 * `checkMeter`.
 *
 * @param readings true pH of each buffer at its temperature, and what the meter showed in it
 * @throws RangeError without a reading
 * @source EPA_FIELD_PH: within 0.05
 */
export function checkShown(readings: readonly { readonly ph: Ph; readonly shown: Ph }[]): ShownCheck {
  if (readings.length === 0) throw new RangeError('at least one buffer is needed');
  const worst = Math.max(...readings.map(({ ph, shown }) => Math.abs(ph - shown)));
  const [low, high] = readings;
  // A hair is left, so that 7.05 in a buffer of 7.00 still counts as within 0.05.
  const good = worst <= METER_AGREES + 1e-9;
  if (low === undefined || high === undefined || low.ph === high.ph) return { worst, good };
  return { worst, good, span: (high.shown - low.shown) / (high.ph - low.ph) };
}
