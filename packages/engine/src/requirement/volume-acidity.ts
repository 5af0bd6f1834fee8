import type { KgPerM3 } from '../units/si.ts';
import type { MethodInput } from './method.ts';

/** mol_c/m³ in 1 meq/100 cm³ (= 1 cmol_c/dm³). */
export const MEQ_PER_100_CM3 = 10;

/**
 * Acidity by the Mehlich buffer: `AC = 4 (6.6 - B)` meq/100 cm³; never below 0.
 *
 * @param bufferPh Mehlich buffer pH, starting at 6.60
 * @source NCDA-tab (read)
 */
export const mehlichAcidity = (bufferPh: number): number => Math.max(0, 4 * (6.6 - bufferPh));

/** Acidity by volume, meq/100 cm³: as the laboratory gives it, else from its Mehlich buffer pH. */
export function acidityByVolume(input: MethodInput): number | undefined {
  const { acidityByVolume: given, buffer } = input.test;
  if (given !== undefined) return given / MEQ_PER_100_CM3;
  return buffer?.method === 'mehlich' ? mehlichAcidity(buffer.value) : undefined;
}

/**
 * Density at which a laboratory that measures by volume scooped the sample; the bed's own when it does not say,
 * because a light mix is light in the scoop too. [SORREL, judgement]
 */
export const scoopDensity = (input: MethodInput): KgPerM3 => input.test.scoopedDensity ?? input.layer.bulkDensity;
