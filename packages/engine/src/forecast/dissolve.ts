import type { Celsius, Ph } from '../units/si.ts';
import { P } from './parameters.ts';

/** Temperature factor of lime, `fT = 1.5^((T−20)/10)`, 0 in frozen soil. Source: TEXT, from memory, weak. */
export function limeTemperatureFactor(temperature: Celsius): number {
  return temperature <= 0 ? 0 : P.q10 ** ((temperature - 20) / 10);
}

/** Moisture factor of lime: 0 dry to 1 at field capacity (TEXT, from memory). */
export function limeMoistureFactor(moisture: number): number {
  return Math.min(1, Math.max(0, moisture));
}

/**
 * Acidity factor of lime, `g(pH) = max(0, (pH_cal − pH)/(pH_cal − 5))`: 1 at pH 5, 0 where carbonate stands in
 * balance with the soil. Source: MODEL (derived).
 */
export function limeAcidityFactor(ph: Ph, pHCal: Ph): number {
  return Math.max(0, (pHCal - ph) / (pHCal - 5));
}

/** Dissolving speed relative to calcite: dolomite half (CON22), by the share of magnesium in the stone. */
export function magnesiumFactor(magnesium: number): number {
  const PURE_DOLOMITE = 0.132;
  return 1 - (1 - P.fDolomite) * Math.min(1, Math.max(0, magnesium / PURE_DOLOMITE));
}
