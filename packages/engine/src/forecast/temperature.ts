import type { Celsius, Metre } from '../units/si.ts';
import { YEAR_DAYS } from './dates.ts';
import { P } from './parameters.ts';

/** A yearly wave: `mean + amplitude · sin(2π (day − crest)/year + π/2)`. */
export interface Wave {
  readonly mean: Celsius;
  readonly amplitude: Celsius;
  /** Day of the year of the warmest day, 0 to 365. */
  readonly crest: number;
}

/**
 * Damping depth `d = sqrt(alpha · P / π)`, m: the wave loses 63 % of its height over it.
 *
 * @param alpha heat diffusivity, m²/s
 * @param period of the wave, s
 * Source: OKS-R.
 */
export function dampingDepth(alpha: number, period: number): Metre {
  return Math.sqrt((alpha * period) / Math.PI);
}

/** Amplitude at a depth: `A0 · exp(−z/d)` (OKS-R). */
export function amplitudeAt(surface: Celsius, depth: Metre, damping: Metre): Celsius {
  return surface * Math.exp(-depth / damping);
}

/**
 * Yearly wave through twelve monthly means, January first. The first harmonic of monthly means is a little flatter
 * than the wave itself (a mean over a twelfth of the year), which is put back.
 */
export function yearlyWave(monthly: readonly Celsius[]): Wave {
  if (monthly.length !== 12) throw new RangeError('yearlyWave needs twelve months');
  let mean = 0;
  let sine = 0;
  let cosine = 0;
  for (const [month, value] of monthly.entries()) {
    const angle = (2 * Math.PI * (month + 0.5)) / 12;
    mean += value / 12;
    sine += (value * Math.sin(angle)) / 6;
    cosine += (value * Math.cos(angle)) / 6;
  }
  const flattened = Math.sin(Math.PI / 12) / (Math.PI / 12);
  const crest = ((Math.atan2(sine, cosine) / (2 * Math.PI) + 1) % 1) * YEAR_DAYS;
  return { mean, amplitude: Math.hypot(sine, cosine) / flattened, crest };
}

/**
 * Soil temperature: `T(z,t) = Ta + A0 exp(−z/d) sin(ω t + φ − z/d)`.
 *
 * @param wave of the surface
 * @param depth z, m, 0 and more
 * @param day t, day of the year
 * @param alpha heat diffusivity, m²/s
 * Source: OKS-R.
 */
export function soilTemperature(wave: Wave, depth: Metre, day: number, alpha: number): Celsius {
  const d = dampingDepth(alpha, YEAR_DAYS * 86_400);
  const angle = (2 * Math.PI * (day - wave.crest)) / YEAR_DAYS + Math.PI / 2;
  return wave.mean + amplitudeAt(wave.amplitude, depth, d) * Math.sin(angle - depth / d);
}

/** Value of a day from twelve monthly means, joined by straight lines from mid-month to mid-month. */
export function monthlyAt(monthly: readonly number[], day: number): number {
  const position = (((day / YEAR_DAYS) * 12 - 0.5) % 12) + 12;
  const before = Math.floor(position) % 12;
  const share = position - Math.floor(position);
  return (monthly[before] ?? 0) * (1 - share) + (monthly[(before + 1) % 12] ?? 0) * share;
}

export interface TemperatureInput {
  /** Twelve monthly means, January first. */
  readonly monthly: readonly Celsius[];
  /** `air`: damped to the depth; `soil`: taken as they are; `container`: air without damping. */
  readonly kind: 'air' | 'soil' | 'container';
  readonly depth: Metre;
  readonly medium?: 'mineral' | 'peat';
  /** Yearly swing of the surface relative to air: 0.95 bare, 0.7 under thick mulch or shade. */
  readonly surface?: number;
}

/**
 * Temperature of the layer on a day of the year. Under snow the soil stays near freezing: where the air month is below
 * zero the value is lifted to 0 °C at the lowest, in the ground only (TEXT, from memory); pots freeze through.
 */
export function temperatureOn(input: TemperatureInput): (day: number) => Celsius {
  const { monthly, kind, depth } = input;
  if (kind !== 'air') return (day) => monthlyAt(monthly, day);
  const air = yearlyWave(monthly);
  const wave = { ...air, amplitude: air.amplitude * (input.surface ?? P.surfaceAmplitude) };
  const alpha = input.medium === 'peat' ? P.alphaPeat : P.alpha;
  return (day) => {
    const temperature = soilTemperature(wave, depth, day, alpha);
    return monthlyAt(monthly, day) < 0 ? Math.max(0, temperature) : temperature;
  };
}
