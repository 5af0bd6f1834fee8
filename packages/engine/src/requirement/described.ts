import { methodRow } from '@sorrel/almanac/methods';
import type { RequirementMethod } from './method.ts';

type Described = Pick<
  RequirementMethod,
  'id' | 'title' | 'regions' | 'referenceDepth' | 'allowance' | 'sdLog' | 'domain' | 'sources' | 'basis'
>;

/**
 * What the almanac says of a method: name, place, depth, allowance, spread, domain, sources.
 *
 * @throws RangeError when the almanac has no such method
 */
export function described(id: string): Described {
  const row = methodRow(id);
  return {
    id: row.id,
    title: row.title,
    regions: row.regions,
    referenceDepth: row.reference_depth_m ?? null,
    allowance: row.allowance,
    sdLog: { matching: row.sd_matching, foreign: row.sd_foreign },
    domain: row.domain ?? '',
    sources: row.sources,
    basis: row.basis === 'judgement' ? 'derived' : row.basis,
  };
}

/**
 * Soil the published rate is meant for, kg/m².
 *
 * @throws RangeError when the method's rate is by volume or per kg, so that there is no such mass
 */
export function publishedSoilMass(id: string): number {
  const mass = methodRow(id).soil_mass_kg_per_m2;
  if (mass === undefined) throw new RangeError(`${id} states no soil mass`);
  return mass;
}
