import { type FinenessClassRow, finenessClasses } from '@sorrel/almanac/fineness-systems';
import type { Fraction, Metre } from '../../units/si.ts';
import type { Passing, SizeShare } from './gradation.ts';
import { sameScreen } from './screen.ts';

/** A size class of a published system, in SI. */
export interface FactorClass {
  readonly finerThan?: Metre;
  readonly coarserThan?: Metre;
  readonly factor: number;
}

/** Systems whose published form multiplies cumulative figures keep their classes under another name. */
const CLASS_FORM: Readonly<Record<string, string>> = { IA: 'IA_class' };

const known = new Map<string, readonly FactorClass[]>();

/** Classes of a system; empty when the system is unknown or lacks a factor. */
export function factorClasses(system: string): readonly FactorClass[] {
  let classes = known.get(system);
  if (classes === undefined) {
    const rows = finenessClasses(CLASS_FORM[system] ?? system);
    classes = rows.every((row) => row.state === 'complete') ? rows.map(inMetres) : [];
    known.set(system, classes);
  }
  return classes;
}

const inMetres = (row: FinenessClassRow): FactorClass => ({
  factor: row.factor ?? 0,
  ...(row.finerThanMm === undefined ? {} : { finerThan: row.finerThanMm / 1000 }),
  ...(row.coarserThanMm === undefined ? {} : { coarserThan: row.coarserThanMm / 1000 }),
});

/** Fineness efficiency, sum of class share × factor, from what passes any screen. Source: the system's own, in the almanac. */
export function efficiencyFromPassing(classes: readonly FactorClass[], passing: Passing): Fraction {
  let sum = 0;
  for (const { finerThan, coarserThan, factor } of classes) {
    const finer = finerThan === undefined ? 1 : passing(finerThan);
    const coarser = coarserThan === undefined ? 0 : passing(coarserThan);
    sum += factor * (finer - coarser);
  }
  return sum;
}

/** The factor of the class with these bounds; `undefined` when the system has no such class. */
export function classFactor(
  classes: readonly FactorClass[],
  { finerThan, coarserThan }: Pick<SizeShare, 'finerThan' | 'coarserThan'>,
): number | undefined {
  return classes.find((c) => same(c.finerThan, finerThan) && same(c.coarserThan, coarserThan))?.factor;
}

const same = (a: Metre | undefined, b: Metre | undefined): boolean =>
  a === undefined || b === undefined ? a === b : sameScreen(a, b);

/** Sum of printed shares × factors when every printed class is one of the system's; otherwise `undefined`. Nothing is rescaled. */
export function efficiencyFromShares(
  classes: readonly FactorClass[],
  shares: readonly SizeShare[],
): Fraction | undefined {
  let sum = 0;
  for (const share of shares) {
    const factor = classFactor(classes, share);
    if (factor === undefined) return undefined;
    sum += factor * share.share;
  }
  return sum;
}
