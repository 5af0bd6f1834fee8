import type { MethodInput, RequirementMethod } from './method.ts';

const known = new WeakMap<readonly string[], Map<string, boolean>>();
/** Regions remembered a list; a table names few. */
const MOST_KEPT = 1000;

/** Whether a list of regions names this one, whatever its capitals. */
export function names(regions: readonly string[], region: string): boolean {
  let answers = known.get(regions);
  if (answers === undefined || answers.size > MOST_KEPT) {
    answers = new Map();
    known.set(regions, answers);
  }
  let named = answers.get(region);
  if (named === undefined) {
    const wanted = region.toLowerCase();
    named = regions.some((each) => each.toLowerCase() === wanted);
    answers.set(region, named);
  }
  return named;
}

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

/** Spreads of a list of methods in one region, and where none is at home. */
interface Spreads {
  readonly foreign: readonly number[];
  readonly regions: Map<string, readonly number[]>;
}

const spreads = new WeakMap<readonly RequirementMethod[], Spreads>();

/**
 * `calibrationSpread` of every method of a list, in its order. Whole lists are asked about thousands of soils from few
 * regions, so each answer is kept.
 */
export function calibrationSpreads(methods: readonly RequirementMethod[], input: MethodInput): readonly number[] {
  let known = spreads.get(methods);
  if (known === undefined) {
    known = { foreign: methods.map(({ sdLog }) => sdLog.foreign), regions: new Map() };
    spreads.set(methods, known);
  }
  if (input.medium === 'mix') return known.foreign;
  const region = input.test.region ?? input.region ?? '';
  let answer = known.regions.get(region);
  if (answer === undefined) {
    if (known.regions.size >= MOST_KEPT) known.regions.clear();
    answer = methods.map((method) => calibrationSpread(method, input));
    known.regions.set(region, answer);
  }
  return answer;
}
