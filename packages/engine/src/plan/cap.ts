import { materialOf } from '@sorrel/almanac/materials';
import { type LimitSituation, limitFor } from '@sorrel/almanac/safe-limits';
import type { Recorder } from '../derivation/derivation.ts';
import type { Product } from '../materials/material.ts';

/** The most of a product for one application, and the wait before the next. */
export interface Cap {
  /** kg of product as sold per m² (per m³ in pots). */
  readonly mass: number;
  /** The same in kg CaCO3 acting. */
  readonly currency: number;
  readonly months: number;
}

/** Without a published limit nothing may be offered. */
const NOTHING: Cap = { mass: 0, currency: 0, months: 12 };

/**
 * Published maximum for one application of a product in a situation: the lowest figure of the almanac's row.
 *
 * @returns a cap of 0 when no publication gives a limit, so that no dose is offered
 * @source almanac `safe-limits`
 */
export function capFor(product: Product, situation: LimitSituation, recorder?: Recorder): Cap {
  const group = materialOf(product.material)?.limitGroup;
  const row = group === undefined ? undefined : limitFor(group, situation);
  const limit = row === undefined ? undefined : situation === 'container' ? row.kgPerM3 : row.kgPerM2;
  if (row === undefined || limit === undefined) return NOTHING;
  const strength = Math.abs(product.currency);
  const mass = row.measure === 'currency' ? limit / strength : limit;
  const cap = { mass, currency: mass * strength * product.efficiency, months: row.monthsApart ?? 6 };
  if (recorder)
    recorder.step({
      symbol: 'D_max',
      title: `Largest single application of ${product.name}`,
      formula: row.measure === 'currency' ? 'D_max = limit · FE (limit counted as CaCO3)' : 'D_max = limit · |a| · FE',
      terms: [
        {
          symbol: 'limit',
          value: limit,
          unit: situation === 'container' ? 'kg/m³' : 'kg/m²',
          origin: 'table',
          source: row.sources[0] ?? 'SORREL',
        },
        { symbol: 'a', value: product.currency, unit: 'kg CaCO3/kg', origin: 'entered' },
        { symbol: 'FE', value: product.efficiency, unit: '', origin: 'entered' },
      ],
      value: cap.currency,
      unit: situation === 'container' ? 'kg CaCO3/m³' : 'kg CaCO3/m²',
      sources: row.sources,
      basis: row.basis,
      note: `${row.published} ${row.unit}; then wait ${cap.months} months.`,
    });
  return cap;
}
