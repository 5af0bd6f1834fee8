import type { Garden, GardenPlan } from '@sorrel/engine/plan';
import { fromSi, type UnitSystem, unitOf, weighable } from '@sorrel/engine/units';
import { type Cell, csvText } from './csv.ts';

export interface TableOptions {
  readonly system: UnitSystem;
  /** `applications`: one row a dressing. `shopping`: one row a product to buy. */
  readonly of: 'applications' | 'shopping';
}

const units = {
  metric: { mass: unitOf('kg'), area: unitOf('g/m²'), volume: unitOf('kg/m³') },
  us: { mass: unitOf('lb'), area: unitOf('lb/100 sq ft'), volume: unitOf('lb/cu yd') },
} as const;

const applicationColumns = [
  'place_id',
  'place',
  'step',
  'only_if_retest',
  'material',
  'product',
  'mass',
  'mass_unit',
  'rate',
  'rate_unit',
  'earliest',
  'latest',
  'retest_from',
] as const;

const shoppingColumns = [
  'material',
  'product',
  'needed',
  'on_hand',
  'buy',
  'mass_unit',
  'bags',
  'bag_mass',
  'cost',
  'money',
] as const;

const round = (value: number): number => Number(value.toPrecision(4));

/**
 * The plan as CSV (RFC 4180) for a spreadsheet: figures as plain numbers with the unit beside them, dates in ISO 8601.
 * Masses are those that are weighed out, never more than the plan's.
 */
export function table(garden: Garden, plan: GardenPlan, options: TableOptions): string {
  return options.of === 'applications'
    ? csvText(applicationColumns, applicationRows(garden, plan, options.system))
    : csvText(shoppingColumns, shoppingRows(garden, plan, options.system));
}

function applicationRows(garden: Garden, plan: GardenPlan, system: UnitSystem): Cell[][] {
  const { mass, area, volume } = units[system];
  return garden.places.flatMap((place, index) => {
    const advice = plan.recommendations[index];
    return (advice?.applications ?? []).map((application): Cell[] => {
      const rate = application.perArea === undefined ? volume : area;
      return [
        place.id,
        place.name,
        application.number,
        application.onlyIfRetest ? 'yes' : 'no',
        application.product.material,
        application.product.name,
        round(fromSi(weighable(application.mass, system, 'down'), mass)),
        mass.symbol,
        round(fromSi(application.perArea ?? application.perVolume ?? 0, rate)),
        rate.symbol,
        application.earliest,
        application.latest,
        advice?.retest?.earliest,
      ];
    });
  });
}

function shoppingRows(garden: Garden, plan: GardenPlan, system: UnitSystem): Cell[][] {
  const { mass } = units[system];
  const weigh = (kilogram: number): number => round(fromSi(kilogram, mass));
  return plan.shopping.map((line): Cell[] => [
    line.product.material,
    line.product.name,
    weigh(line.needed),
    weigh(line.onHand),
    weigh(line.buy),
    mass.symbol,
    line.bags,
    line.product.bag === undefined ? undefined : weigh(line.product.bag.mass),
    line.cost,
    line.cost === undefined ? undefined : garden.currencySymbol,
  ]);
}
