import type { Celsius, Ph } from '../units/si.ts';

/** mV per pH per kelvin: R ln 10/F (GENERAL). */
const NERNST = 0.19842;
const KELVIN = 273.15;

/** Slope of a perfect glass electrode, mV per pH: 59.16 at 25 °C. */
export const nernstSlope = (temperature: Celsius): number => NERNST * (temperature + KELVIN);

export interface MeterCheck {
  /** Slope of this meter, mV per pH, positive. */
  readonly slope: number;
  /** Share of the perfect slope; 1 is perfect. */
  readonly share: number;
  /** Between 95 and 105 % (GENERAL, from memory). */
  readonly good: boolean;
}

/**
 * Slope of a meter from its millivolts in two buffers.
 *
 * @param low pH of the buffer at its temperature, and the meter's mV in it
 * @throws RangeError when both buffers have the same pH
 */
export function checkMeter(
  low: { readonly ph: Ph; readonly millivolt: number },
  high: { readonly ph: Ph; readonly millivolt: number },
  temperature: Celsius,
): MeterCheck {
  if (low.ph === high.ph) throw new RangeError('two different buffers are needed');
  const slope = (low.millivolt - high.millivolt) / (high.ph - low.ph);
  const share = slope / nernstSlope(temperature);
  return { slope, share, good: share >= 0.95 && share <= 1.05 };
}
