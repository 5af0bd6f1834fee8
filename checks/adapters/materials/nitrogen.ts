import type { NitrogenForm } from '@sorrel/almanac/nitrogen-forms';
import { type Contents, nitrogenAcidity, pierreSum } from '@sorrel/engine/materials';
import type { Adapter } from '../../adapter.ts';
import { answers, expects, kgIn, numberAt, tableAt, textAt } from './shapes.ts';

const FORMS: readonly (readonly [RegExp, NitrogenForm])[] = [
  [/diammonium|^dap$/i, 'dap'],
  [/monoammonium|^map$/i, 'map'],
  [/ammonium nitrate/i, 'ammonium nitrate'],
  [/^ammoni(um|cal)( (sulf|sulph|chlor|phos)\w*)?( salts?)?$/i, 'ammonium'],
  [/nitrate/i, 'nitrate'],
  [/urea|ammonia|organic|manure|meal/i, 'urea'],
];

const formOf = (text: string): NitrogenForm | undefined => FORMS.find(([pattern]) => pattern.test(text.trim()))?.[1];

/** The classic factors are those of half the nitrogen leached, the maxima those of all of it. */
const leachedBy = (factor: string | undefined): number | undefined =>
  factor === undefined
    ? undefined
    : /max|all lost|all leached/i.test(factor)
      ? 1
      : /uptake|taken|none|min/i.test(factor)
        ? 0
        : 0.5;

const ELEMENTS = new Set(['N', 'S', 'Cl', 'P', 'Ca', 'Mg', 'K', 'Na', 'P2O5', 'K2O']);

/** Acid of fertilizers. */
export const nitrogen: readonly Adapter[] = [
  {
    name: 'acid of fertilizer nitrogen',
    accepts: (check) =>
      numberAt(check.inputs, /^N_(lb|kg|g)/) !== undefined &&
      formOf(textAt(check.inputs, /^(form|material|fertilizer|source)$/) ?? '') !== undefined &&
      expects(check, /CaCO3/),
    compute: (check) => {
      const { inputs } = check;
      const [from = '', amount] = Object.entries(inputs).find(([key]) => /^N_(lb|kg|g)/.test(key)) ?? [];
      const form = formOf(textAt(inputs, /^(form|material|fertilizer|source)$/) ?? '') ?? 'urea';
      const leached = numberAt(inputs, /leach/) ?? leachedBy(textAt(inputs, /^factor$/)) ?? 0.5;
      // Cases print the lime that makes up for the acid: positive is acid.
      return answers(
        check,
        (key) => (-nitrogenAcidity(Number(amount), form, leached) * kgIn(from)) / kgIn(key.replace(/^CaCO3_/, '')),
      );
    },
  },
  {
    name: 'Pierre sum',
    accepts: (check) =>
      Object.keys(tableAt(check.inputs, /^(pct|percent|analysis)$/) ?? { none: 0 }).every((key) => ELEMENTS.has(key)) &&
      expects(check, /CaCO3/),
    compute: (check) => {
      const contents = Object.fromEntries(
        Object.entries(tableAt(check.inputs, /^(pct|percent|analysis)$/) ?? {}).map(([key, value]) => [
          key,
          value / 100,
        ]),
      );
      const perKg = pierreSum(contents as Contents);
      return answers(check, (key) => perKg * (/ton/.test(key) ? 2000 : /100/.test(key) ? 100 : 1));
    },
  },
];
