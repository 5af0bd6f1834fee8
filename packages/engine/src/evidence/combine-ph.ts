import type { PhEstimate } from '../soil/soil.ts';
import type { IsoDate, Ph } from '../units/si.ts';
import { averagePh } from './average-ph.ts';
import type { Comparable } from './comparable.ts';

/** Tests of one day by one laboratory or one gardener, averaged. */
export interface DayReading {
  readonly date: IsoDate;
  readonly mean: Ph;
  /** Variance on the day of the test. */
  readonly variance: number;
  readonly home: boolean;
  readonly members: readonly Comparable[];
}

/** Replicates of one day: pH averaged as it is; only the cores' part of the error shrinks. */
export function averageDay(members: readonly Comparable[], coreSd: number): DayReading {
  const first = members[0];
  if (first === undefined) throw new RangeError('a day needs at least one test');
  let cores = 0;
  let fixed = 0;
  for (const member of members) {
    cores += member.cores;
    fixed = Math.max(fixed, member.fixed);
  }
  return {
    date: first.test.date,
    mean: averagePh(members.map((member) => member.mean)),
    variance: (coreSd * coreSd) / cores + fixed,
    home: first.test.instrument !== 'laboratory',
    members,
  };
}

/** Same day, same kind of instrument, same laboratory. */
export function groupByDay(all: readonly Comparable[], coreSd: number): DayReading[] {
  const groups = new Map<string, Comparable[]>();
  for (const one of all) {
    const key = `${one.test.date}|${one.test.instrument}|${one.test.laboratory ?? ''}`;
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  return [...groups.values()].map((members) => averageDay(members, coreSd));
}

/** 95 % point of chi-square by the cube-root approximation of Wilson and Hilferty (from memory), within 2 % from 1 degree on. */
const chiSquare95 = (degrees: number): number => {
  const a = 2 / (9 * degrees);
  return degrees * (1 - a + 1.645 * Math.sqrt(a)) ** 3;
};

/**
 * Precision-weighted mean. When the readings scatter more than their errors explain, the error is widened by the
 * square root of chi-square per degree of freedom. It never falls below `floor`, for tests of one laboratory share its bias.
 */
export function combine(
  means: readonly number[],
  variances: readonly number[],
  floor: number,
): PhEstimate & { readonly disagree: boolean } {
  let weights = 0;
  let sum = 0;
  for (const [index, mean] of means.entries()) {
    const weight = 1 / (variances[index] ?? Number.POSITIVE_INFINITY);
    weights += weight;
    sum += weight * mean;
  }
  const mean = Math.min(Math.max(...means), Math.max(Math.min(...means), sum / weights));
  let chi = 0;
  for (const [index, one] of means.entries()) chi += (one - mean) ** 2 / (variances[index] ?? Number.POSITIVE_INFINITY);
  const degrees = means.length - 1;
  const widen = degrees > 0 ? Math.max(1, chi / degrees) : 1;
  return {
    mean,
    sd: Math.max(floor, Math.sqrt(widen / weights)),
    disagree: degrees > 0 && chi > chiSquare95(degrees),
  };
}
