import type { MaterialRow } from '@sorrel/almanac/materials';
import type { Problem } from '../derivation/problem.ts';
import type { Fraction, KgPerM3, Kilogram } from '../units/si.ts';
import type { SizeShare } from './fineness/gradation.ts';
import type { Sieve } from './material.ts';

/** What the label or an analysis of one product says, in SI; everything may be missing. */
export interface LabelFigures {
  readonly name?: string;
  /** kg CaCO3 per kg dry (CCE), above 0 to 2.5; for liming materials and composts. */
  readonly neutralisingValue?: Fraction;
  readonly moisture?: Fraction;
  readonly sieves?: readonly Sieve[];
  /** Shares by size class, when the label prints those instead of what passes. */
  readonly sizes?: readonly SizeShare[];
  readonly efficiency?: Fraction;
  /** kg of the pure material per kg, e.g. 0.90 for sulfur prills. */
  readonly purity?: Fraction;
  readonly iron?: Fraction;
  readonly aluminium?: Fraction;
  readonly calcium?: Fraction;
  readonly magnesium?: Fraction;
  readonly density?: KgPerM3;
  readonly bag?: { readonly mass: Kilogram; readonly price?: number };
  readonly onHand?: Kilogram;
}

/** Allowed range of each figure, with what to write instead. */
const RANGES: readonly (readonly [keyof LabelFigures, number, number, string])[] = [
  ['neutralisingValue', 0.001, 2.5, 'Enter the calcium carbonate equivalent, from 0.1 % to 250 %.'],
  ['moisture', 0, 0.95, 'Enter the water in the product, from 0 to 95 %.'],
  ['efficiency', 0, 1, 'Enter the fineness efficiency, from 0 to 100 %.'],
  ['purity', 0.01, 1, 'Enter the purity, from 1 to 100 %.'],
  ['iron', 0.01, 0.37, 'Enter the iron on the label, from 1 to 37 %.'],
  ['aluminium', 0.01, 0.16, 'Enter the aluminum on the label, from 1 to 16 %.'],
  ['calcium', 0, 0.72, 'Enter the calcium on the label, from 0 to 72 %.'],
  ['magnesium', 0, 0.61, 'Enter the magnesium on the label, from 0 to 61 %.'],
  ['density', 20, 3000, 'Enter the loose density, from 0.02 to 3 kg per litre.'],
  ['onHand', 0, 1e6, 'Enter how much you have, 0 or more.'],
];

/** What is wrong with label figures for a material; empty when nothing is. */
export function labelProblems(row: MaterialRow, label: LabelFigures): Problem[] {
  const problems: Problem[] = [];
  for (const [field, low, high, fix] of RANGES) {
    const value = label[field];
    if (value === undefined || (typeof value === 'number' && value >= low && value <= high)) continue;
    problems.push({
      code: 'materials.label-figure',
      field,
      value,
      message: `${String(value)} cannot be the ${field} of ${label.name ?? row.name}.`,
      fix,
    });
  }
  if (label.bag !== undefined && !(label.bag.mass > 0))
    problems.push({
      code: 'materials.label-figure',
      field: 'bag.mass',
      value: label.bag.mass,
      message: 'A bag must weigh more than nothing.',
      fix: 'Enter the mass printed on the bag.',
    });
  return problems;
}
