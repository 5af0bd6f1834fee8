import type { Celsius } from '../units/si.ts';
import { P } from './parameters.ts';

const GAS = 8.314;
const KELVIN = 273.15;

const arrhenius = (temperature: Celsius): number =>
  Math.exp((-P.ea / GAS) * (1 / (temperature + KELVIN) - 1 / (25 + KELVIN)));
const HOT = arrhenius(35);

/**
 * Temperature factor of sulfur oxidation relative to 25 °C: Arrhenius with Ea 85 kJ/mol, 0 in frozen soil,
 * flat from 35 to 40 °C, then down to 0 at 55 °C. Source: WB93 (Ea); KSU-L (optimum 24-40 °C).
 */
export function sulfurTemperatureFactor(temperature: Celsius): number {
  if (temperature <= 0 || temperature >= 55) return 0;
  if (temperature <= 35) return arrhenius(temperature);
  return temperature <= 40 ? HOT : (HOT * (55 - temperature)) / 15;
}

/** Moisture factor, `fW = max(0, 1 − ((w−1)/0.8)²)`, w relative to field capacity. Source: WB93. */
export function sulfurMoistureFactor(moisture: number): number {
  return Math.max(0, 1 - ((moisture - 1) / P.moistHalfwidth) ** 2);
}

/**
 * Diameter a sulfur grain loses in a day at 25 °C, `2 K_S/rho_S`, m/day.
 *
 * @param kSulfur K_S, kg/m²/day
 * Source: WB93, K_S from DEG16a.
 */
export function sulfurDiameterLoss(kSulfur: number): number {
  return (2 * kSulfur) / P.rhoSulfur;
}
