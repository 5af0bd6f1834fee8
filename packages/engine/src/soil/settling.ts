import type { Recorder } from '../derivation/derivation.ts';
import type { Celsius, KgPerM3, Metre } from '../units/si.ts';

const GRAVITY = 9.80665;
const WATER: KgPerM3 = 998.2;
/** Mineral grains (GENERAL). */
const GRAIN: KgPerM3 = 2650;

/** Viscosity of water, Pa·s, 0 to 60 °C: 2.414e-5·10^(247.8/(T − 140 K)) (from memory; 1.002 mPa·s at 20 °C). */
export const waterViscosity = (temperature: Celsius): number => 2.414e-5 * 10 ** (247.8 / (temperature + 273.15 - 140));

/**
 * Seconds for a grain to sink through still water by Stokes: `t = 18·η·h / (g·(ρs − ρw)·d²)`.
 * At 20 °C through 10 cm: 45 s for 0.05 mm, 7.7 h for 0.002 mm. Holds up to about 0.06 mm.
 *
 * @param diameter m, over 0
 * @param height m of water, over 0
 * @throws RangeError when a length is not over 0
 */
export function settlingTime(diameter: Metre, height: Metre, temperature: Celsius = 20, recorder?: Recorder): number {
  if (!(diameter > 0 && height > 0)) throw new RangeError('diameter and height must be over 0');
  const viscosity = waterViscosity(temperature);
  const seconds = (18 * viscosity * height) / (GRAVITY * (GRAIN - WATER) * diameter * diameter);
  if (recorder)
    recorder.step({
      symbol: 't',
      title: 'Time to settle',
      formula: 't = 18 eta h / (g (rho_s - rho_w) d^2)',
      terms: [
        { symbol: 'eta', value: viscosity, unit: 'Pa.s', origin: 'table', source: 'GENERAL' },
        { symbol: 'h', value: height, unit: 'm', origin: 'entered' },
        { symbol: 'd', value: diameter, unit: 'm', origin: 'choice' },
        { symbol: 'rho_s', value: GRAIN, unit: 'kg/m3', origin: 'table', source: 'GENERAL' },
        { symbol: 'rho_w', value: WATER, unit: 'kg/m3', origin: 'table', source: 'GENERAL' },
      ],
      value: seconds,
      unit: 's',
      sources: ['GENERAL'],
      basis: 'memory',
    });
  return seconds;
}
