import type { MethodInput, RequirementMethod } from './method.ts';

const lowered = new WeakMap<readonly string[], ReadonlySet<string>>();

/** Region names in lower case, made once a list. */
function namesOf(regions: readonly string[]): ReadonlySet<string> {
  const known = lowered.get(regions);
  if (known !== undefined) return known;
  const names = new Set(regions.map((name) => name.toLowerCase()));
  lowered.set(regions, names);
  return names;
}

/** Whether a list of regions names this one, whatever its capitals. */
export const names = (regions: readonly string[], region: string): boolean =>
  regions.includes(region) || namesOf(regions).has(region.toLowerCase());

/**
 * Whether a method was calibrated where this soil lies: the laboratory's region first, else the gardener's.
 * General chemistry (no regions) serves everywhere.
 */
export function serves(method: RequirementMethod, input: Pick<MethodInput, 'test' | 'region'>): boolean {
  if (method.regions.length === 0) return true;
  const region = input.test.region ?? input.region;
  return region !== undefined && names(method.regions, region);
}

/**
 * Spread of ln beta0 that a method's calibration deserves here, before the error of the pH. A bed filled
 * with a compost-rich mix is foreign ground to every field calibration. [SORREL, judgement]
 */
export const calibrationSpread = (method: RequirementMethod, input: MethodInput): number =>
  input.medium !== 'mix' && serves(method, input) ? method.sdLog.matching : method.sdLog.foreign;
