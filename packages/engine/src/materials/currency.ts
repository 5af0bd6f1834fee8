import type { MaterialRow } from '@sorrel/almanac/materials';
import type { Recorder } from '../derivation/derivation.ts';
import { fail, ok, type Result } from '../derivation/problem.ts';
import type { Kilogram } from '../units/si.ts';
import type { LabelFigures } from './label.ts';
import type { Product } from './material.ts';
import { aluminiumSulfateAcidity, ironSulfateAcidity } from './metal-sulfate.ts';

/**
 * kg CaCO3 that 1 kg as sold neutralises (positive) or uses up (negative), before fineness: `c = NV · purity · (1 − w)`.
 * The label comes first: its neutralising value, its % iron or aluminum, its purity and moisture.
 *
 * @source row of the almanac table `materials`; CALC for acids
 */
export function currencyPerKg(row: MaterialRow, label: LabelFigures = {}, recorder?: Recorder): number {
  const moisture = label.moisture ?? row.moisture;
  const purity = label.purity ?? row.purity;
  const ownValue = row.role === 'acidifying' ? fromMetal(row, label, recorder) : label.neutralisingValue;
  const perPure = ownValue ?? row.nvTypical;
  const value = ownValue === undefined ? perPure * purity * (1 - moisture) : perPure * (1 - moisture);
  if (recorder)
    recorder.step({
      symbol: 'c',
      title: `What 1 kg of ${label.name ?? row.name} does, as calcium carbonate`,
      formula: ownValue === undefined ? 'c = NV · p · (1 − w)' : 'c = NV · (1 − w)',
      terms: [
        ownValue === undefined
          ? { symbol: 'NV', value: perPure, unit: 'kg CaCO3/kg', origin: 'table', source: row.sources[0] ?? 'SORREL' }
          : { symbol: 'NV', value: perPure, unit: 'kg CaCO3/kg', origin: 'entered' },
        ...(ownValue === undefined
          ? [
              {
                symbol: 'p',
                value: purity,
                unit: 'kg/kg',
                origin: label.purity === undefined ? 'choice' : 'entered',
              } as const,
            ]
          : []),
        { symbol: 'w', value: moisture, unit: 'kg/kg', origin: label.moisture === undefined ? 'choice' : 'entered' },
      ],
      value,
      unit: 'kg CaCO3/kg',
      sources: row.sources,
      basis: row.basis,
      ...(row.note === undefined ? {} : { note: row.note }),
    });
  return value;
}

function fromMetal(row: MaterialRow, label: LabelFigures, recorder?: Recorder): number | undefined {
  if (row.iron !== undefined && label.iron !== undefined) return ironSulfateAcidity(label.iron, recorder);
  if (row.aluminium !== undefined && label.aluminium !== undefined)
    return aluminiumSulfateAcidity(label.aluminium, recorder);
  return undefined;
}

/** Share of a product's currency that the dose may count on: fineness efficiency, 1 where fineness means nothing. */
export const effectiveCurrency = (product: Product): number => product.currency * product.efficiency;

/**
 * Mass as sold that gives an amount of currency: `m = E / (c · FE)`, which is `E / (NV · FE · (1 − w))`.
 *
 * @param currency E, kg CaCO3 (or kg/m², kg/m³ for a rate), positive to sweeten, negative to sour
 * @returns kg (or kg/m², kg/m³), or a problem when the product does not work in that direction
 * @source definition; PSULAWN, CLEMBY for the correction
 */
export function massFor(currency: number, product: Product, recorder?: Recorder): Result<number> {
  const perKg = effectiveCurrency(product);
  if (currency === 0) return ok(0);
  if (perKg === 0 || currency > 0 !== perKg > 0)
    return fail({
      code: 'materials.wrong-direction',
      field: 'product',
      value: product.material,
      message: `${product.name} cannot ${currency > 0 ? 'raise' : 'lower'} the pH.`,
      fix: currency > 0 ? 'Choose a limestone.' : 'Choose sulfur.',
    });
  const value = currency / perKg;
  if (recorder)
    recorder.step({
      symbol: 'm',
      title: `${product.name} to weigh out`,
      formula: 'm = E / (c · FE)',
      terms: [
        { symbol: 'E', value: currency, unit: 'kg CaCO3', origin: 'entered' },
        {
          symbol: 'c',
          value: product.currency,
          unit: 'kg CaCO3/kg',
          origin: product.currencyBasis === 'label' ? 'entered' : 'choice',
        },
        {
          symbol: 'FE',
          value: product.efficiency,
          unit: '',
          origin: product.efficiencyBasis === 'assumed' ? 'choice' : 'entered',
        },
      ],
      value,
      unit: 'kg',
      sources: ['PSULAWN', 'CLEMBY'],
      basis: 'read',
    });
  return ok(value);
}

/** Currency that a mass of a product brings, kg CaCO3, signed: `E = m · c · FE`. The inverse of `massFor`. */
export const currencyOf = (mass: Kilogram, product: Product): number => mass * effectiveCurrency(product);

/**
 * Mass of another product that does the same work.
 *
 * @returns kg of `to`, or a problem when it works in the other direction
 */
export const swap = (mass: Kilogram, from: Product, to: Product): Result<Kilogram> =>
  massFor(currencyOf(mass, from), to);
