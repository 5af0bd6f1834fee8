import { finenessClasses, finenessSystemNames } from '@sorrel/almanac/fineness-systems';
import type { Recorder } from '../../derivation/derivation.ts';
import type { Message } from '../../derivation/message.ts';
import { fail, ok, type Result } from '../../derivation/problem.ts';
import type { Fraction } from '../../units/si.ts';
import type { Sieve } from '../material.ts';
import { alabamaEfficiency } from './alabama.ts';
import { efficiencyFromPassing, efficiencyFromShares, factorClasses } from './class-factors.ts';
import { type Passing, passingOf, type SizeShare, sievesOf } from './gradation.ts';
import { iowaEfficiency } from './iowa.ts';
import { mississippiEfficiency } from './mississippi.ts';
import { sameScreen } from './screen.ts';

export interface Fineness {
  readonly efficiency: Fraction;
  /** What to know about the figure: shares that miss 100 %, screens the label does not give. */
  readonly warnings: readonly Message[];
}

/** Systems whose publication gives a formula of its own; the rest sum class shares times factors. */
const PUBLISHED: Readonly<Record<string, (passing: Passing) => Fraction>> = {
  IA: iowaEfficiency,
  MS: mississippiEfficiency,
  KY: mississippiEfficiency,
  AL: alabamaEfficiency,
};

/** Shares further than this from 100 % are said to be so; labels round to one decimal in about five classes. */
const ROUNDING = 0.005;

/**
 * Fineness efficiency from the share that passes tested screens. Screens the system needs and the label does not give are
 * interpolated on the logarithm of the opening.
 *
 * @param system almanac name of the published system, e.g. `OH`
 * @param sieves at least one tested screen
 * @returns 0 to 1, or a problem: unknown system, factors never retrieved, no or impossible sieves
 * @source the system's own, in the almanac table `fineness-systems`
 */
export function efficiencyOfSieves(system: string, sieves: readonly Sieve[], recorder?: Recorder): Result<Fineness> {
  const classes = factorClasses(system);
  if (classes.length === 0) return unknownSystem(system);
  const wrong = impossible(sieves);
  if (wrong !== undefined) return wrong;
  const passing = passingOf(sieves);
  const efficiency = PUBLISHED[system]?.(passing) ?? efficiencyFromPassing(classes, passing);
  const finest = Math.min(...sieves.map((sieve) => sieve.opening));
  const beyond = classes.some(
    ({ finerThan, coarserThan, factor }) =>
      coarserThan === undefined &&
      finerThan !== undefined &&
      factor > 0 &&
      finerThan < finest &&
      !sameScreen(finerThan, finest),
  );
  if (recorder) record(recorder, system, efficiency);
  return ok({ efficiency, warnings: beyond ? [{ code: 'materials.fineness-beyond-screens' }] : [] });
}

/**
 * Fineness efficiency from printed class shares. Shares that do not sum to 100 % are used as printed, with a warning.
 *
 * @param shares as fractions; classes of another system's screens are interpolated
 * @returns as `efficiencyOfSieves`
 */
export function efficiencyOfShares(
  system: string,
  shares: readonly SizeShare[],
  recorder?: Recorder,
): Result<Fineness> {
  const classes = factorClasses(system);
  if (classes.length === 0) return unknownSystem(system);
  let total = 0;
  for (const { share } of shares) total += share;
  const warnings: Message[] = [];
  if (Math.abs(total - 1) > ROUNDING)
    warnings.push({ code: 'materials.fineness-sum', parameters: { total: `${Math.round(total * 1000) / 10} %` } });
  const direct = efficiencyFromShares(classes, shares);
  if (direct === undefined) {
    const read = efficiencyOfSieves(system, sievesOf(shares), recorder);
    return read.ok ? ok({ efficiency: read.value.efficiency, warnings: [...warnings, ...read.value.warnings] }) : read;
  }
  if (recorder) record(recorder, system, direct);
  return ok({ efficiency: direct, warnings });
}

function record(recorder: Recorder, system: string, efficiency: Fraction): void {
  const rows = finenessClasses(system);
  const memory = rows.some((row) => row.basis === 'memory');
  const sources = [...new Set(rows.flatMap((row) => row.sources))];
  recorder.step({
    symbol: 'FE',
    title: `Fineness efficiency, ${rows[0]?.title ?? system} rule`,
    formula: rows.some((row) => row.cumulative)
      ? 'FE = sum of (factor · share passing)'
      : 'FE = sum of (factor · share in class)',
    terms: rows.map((row) => ({
      symbol: `f(${row.finerThanMm ?? '∞'}–${row.coarserThanMm ?? 0} mm)`,
      value: row.factor ?? 0,
      unit: '',
      origin: 'table' as const,
      source: row.sources[0] ?? 'SORREL',
    })),
    value: efficiency,
    unit: '',
    sources,
    basis: memory ? 'memory' : 'read',
  });
}

function impossible(sieves: readonly Sieve[]): Result<never> | undefined {
  const sorted = [...sieves].sort((a, b) => b.opening - a.opening);
  let last = 1;
  for (const { opening, passing } of sorted) {
    if (!(opening > 0) || !(passing >= 0) || passing > last + 1e-9) return badSieve(passing, opening);
    last = passing;
  }
  return sorted.length === 0 ? badSieve(undefined, undefined) : undefined;
}

const badSieve = (passing: unknown, opening: number | undefined) =>
  fail({
    code: 'materials.sieves',
    field: 'sieves',
    value: passing,
    message:
      opening === undefined
        ? 'No sieve figures were given.'
        : `The share passing the ${opening * 1000} mm screen cannot be right beside the coarser ones.`,
    fix: 'Enter the percent that passes each screen; a finer screen never lets more through.',
  });

const unknownSystem = (system: string) => {
  const listed = finenessSystemNames.find((known) => known.system === system);
  return fail({
    code: 'materials.fineness-system',
    field: 'finenessSystem',
    value: system,
    message:
      listed === undefined
        ? `No fineness rule is called "${system}".`
        : `The class factors of the ${listed.title} rule could not be found, so it is not computed.`,
    fix: `Choose one of: ${finenessSystemNames
      .filter((known) => known.state === 'complete')
      .map((known) => known.system)
      .join(', ')}.`,
  });
};
