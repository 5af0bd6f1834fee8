import { bufferTemperature } from '@sorrel/almanac/buffer-temperature';
import type { Celsius, Ph } from '../units/si.ts';

/** Names of the buffer sets in the almanac. */
export const BUFFER_SETS: readonly string[] = [...new Set(bufferTemperature.map((row) => row.set))];

/** Nominal values of one set, e.g. 4, 7 and 10. */
export const buffersOf = (set: string): readonly number[] => [
  ...new Set(bufferTemperature.filter((row) => row.set === set).map((row) => row.nominal)),
];

/**
 * True pH of a calibration buffer at its own temperature, by straight lines between the printed values (BUFFER_US;
 * NIST values over 15 °C from memory).
 *
 * @param set name of the buffer set
 * @param nominal value on the bottle
 * @param temperature °C, inside the printed range
 * @returns undefined for an unknown buffer or a temperature outside the table
 */
export function bufferPhAt(set: string, nominal: number, temperature: Celsius): Ph | undefined {
  const rows = bufferTemperature
    .filter((row) => row.set === set && row.nominal === nominal)
    .sort((a, b) => a.temperature - b.temperature);
  const next = rows.findIndex((row) => row.temperature >= temperature);
  const above = rows[next];
  if (above === undefined) return undefined;
  if (above.temperature === temperature) return above.ph;
  const below = rows[next - 1];
  if (below === undefined) return undefined;
  const share = (temperature - below.temperature) / (above.temperature - below.temperature);
  return below.ph + share * (above.ph - below.ph);
}
