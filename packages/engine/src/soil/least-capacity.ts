import { curveParameter } from '@sorrel/almanac/curve-parameters';
import type { Recorder } from '../derivation/derivation.ts';
import type { BufferCapacity, Fraction } from '../units/si.ts';
import { representativeCarbon } from './representative.ts';
import type { LogEstimate, Medium, Texture } from './soil.ts';
import { soillessCapacity } from './soilless.ts';

const INTERCEPT = curveParameter('intercept').value;
const PER_CARBON = curveParameter('organic-carbon').value;
const PER_CLAY = curveParameter('clay').value;
const SD_BOTH = curveParameter('sd-texture-and-organic').value;
const SD_TEXTURE = curveParameter('sd-texture-only').value;
const SD_MEDIUM = curveParameter('sd-medium-only').value;

/** A compost-rich bed when nothing else is known: 6 % carbon, 15 % clay (MODEL). */
const MIX_CARBON: Fraction = 0.06;
const MIX_CLAY: Fraction = 0.15;
/** Carbon beyond which the equation was never tested; more is counted as this much, the smaller dose. */
const CARBON_TESTED: Fraction = 0.06;

/**
 * Least buffer capacity by organic carbon and clay: `beta = 0.50045·(1 + 1.02·OC% + 0.058·clay%)` g CaCO3/kg/pH
 * (Curtin and Trolove 2013, via HB-PTF; New Zealand, 30 soils). About pH 4.5 to 6.5 and carbon to 6 %.
 *
 * @returns kg CaCO3/kg/pH
 */
export const capacityByCarbonAndClay = (carbon: Fraction, clay: Fraction): BufferCapacity =>
  (INTERCEPT * (1 + PER_CARBON * carbon * 100 + PER_CLAY * clay * 100)) / 1000;

export interface CapacityFacts {
  readonly medium: Medium;
  readonly texture?: Texture | undefined;
  readonly organicCarbon?: Fraction | undefined;
  /** kg/m³; soilless media are known by volume. */
  readonly bulkDensity?: number | undefined;
}

/**
 * Default least buffer capacity of a soil that was never titrated, with the spread it deserves: 0.45 with texture and
 * carbon, 0.6 with texture only, 0.7 when only the medium is known (ln units). Sand 21, sandy loam 32, loam 42, clay loam
 * 54, clay 62, compost-rich bed 80 mmol/kg/pH.
 */
export function leastCapacity(facts: CapacityFacts, recorder?: Recorder): LogEstimate {
  if (facts.medium === 'soilless') return soillessCapacity(facts.bulkDensity);
  const mixed = facts.medium !== 'mineral';
  const { texture, organicCarbon } = facts;
  const carbon = organicCarbon ?? (mixed ? MIX_CARBON : representativeCarbon(texture?.name ?? 'loam'));
  const clay = texture?.parts.clay ?? (mixed ? MIX_CLAY : 0.2);
  const median = capacityByCarbonAndClay(Math.min(carbon, CARBON_TESTED), clay);
  const known = texture !== undefined && organicCarbon !== undefined;
  const sdLog = known && !mixed ? SD_BOTH : texture !== undefined && !mixed ? SD_TEXTURE : SD_MEDIUM;
  if (recorder)
    recorder.step({
      symbol: 'beta0',
      title: 'Least buffer capacity, from organic carbon and clay',
      formula: 'beta0 = 0.00050045 (1 + 102 OC + 5.8 clay)',
      terms: [
        { symbol: 'OC', value: carbon, unit: 'kg/kg', origin: organicCarbon === undefined ? 'choice' : 'entered' },
        { symbol: 'clay', value: clay, unit: 'kg/kg', origin: texture === undefined ? 'choice' : 'entered' },
      ],
      value: median,
      unit: 'kg/kg/pH',
      sources: ['CurtinTrolove2013', 'HB-PTF'],
      basis: 'read',
      note: `standard deviation of ln beta0 ${sdLog}`,
    });
  return { median, sdLog };
}
