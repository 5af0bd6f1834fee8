import { materialOf } from '@sorrel/almanac/materials';
import { csvCell } from '@sorrel/engine/document';
import type { Place, Recommendation } from '@sorrel/engine/plan';
import { methodById } from '@sorrel/engine/requirement';
import { fromSi, say, type UnitSystem, unitOf } from '@sorrel/engine/units';
import { figureText } from './figure-text.ts';

/** Columns of the table of plans, in order. */
export const planColumns = [
  'line',
  'place',
  'ph',
  'ph_error',
  'low',
  'high',
  'aim',
  'decision',
  'material',
  'step_1',
  'step_1_unit',
  'rate',
  'rate_unit',
  'more_steps',
  'overshoot_chance',
  'retest_from',
  'readings',
  'from_memory',
  'why',
] as const;

export type PlanRow = Readonly<Record<(typeof planColumns)[number], string | number | undefined>>;

const units = {
  metric: { mass: unitOf('kg'), area: unitOf('g/m²'), volume: unitOf('kg/m³') },
  us: { mass: unitOf('lb'), area: unitOf('lb/100 sq ft'), volume: unitOf('lb/cu yd') },
} as const;

const round = (value: number, parts: number): number => Math.round(value * parts) / parts;
/** To three significant figures. */
function significant(value: number): number {
  if (value === 0 || !Number.isFinite(value)) return value;
  const scale = 10 ** (2 - Math.floor(Math.log10(Math.abs(value))));
  return scale >= 1 ? Math.round(value * scale) / scale : Math.round(value * scale) * Math.round(1 / scale);
}

/** One place's plan as a row: figures as plain numbers, each unit beside its figure. */
export function planRow(line: number, place: Place, plan: Recommendation, system: UnitSystem): PlanRow {
  const first = plan.applications[0];
  const { mass, area, volume } = units[system];
  const rate = first?.perArea === undefined ? volume : area;
  const headline = plan.reasons[0];
  return {
    line,
    place: place.name,
    ph: plan.present === undefined ? undefined : round(plan.present.mean, 100),
    ph_error: plan.present === undefined ? undefined : round(plan.present.sd, 100),
    low: round(plan.target.low, 100),
    high: round(plan.target.high, 100),
    aim: round(plan.target.aim, 100),
    decision: plan.decision,
    material: first?.product.name,
    step_1: first === undefined ? undefined : significant(fromSi(first.mass, mass)),
    step_1_unit: first === undefined ? undefined : mass.symbol,
    rate: first === undefined ? undefined : significant(fromSi(first.perArea ?? first.perVolume ?? 0, rate)),
    rate_unit: first === undefined ? undefined : rate.symbol,
    more_steps: laterSteps(plan),
    overshoot_chance: plan.overshootChance === undefined ? undefined : round(plan.overshootChance, 1000),
    retest_from: plan.retest?.earliest,
    readings: methodsOf(plan),
    from_memory: restsOnMemory(place, plan) ? 'yes' : 'no',
    why: headline === undefined ? '' : say(headline, system),
  };
}

function laterSteps({ applications }: Recommendation): number {
  let count = 0;
  for (const { onlyIfRetest } of applications) if (onlyIfRetest) count++;
  return count;
}

/** The methods that spoke, between semicolons. */
function methodsOf({ reconciled }: Recommendation): string {
  let text = '';
  for (const { method } of reconciled?.used ?? []) text += text === '' ? method : `;${method}`;
  return text;
}

/** Whether a figure nobody could retrieve stands behind the plan: a plant's range, a method or the usual figures of a material. */
function restsOnMemory(place: Place, plan: Recommendation): boolean {
  return (
    (plan.target.basis === 'plants' && place.plants.some((plant) => plant.basis === 'memory')) ||
    (plan.reconciled?.used.some((reading) => methodById(reading.method)?.basis === 'memory') ?? false) ||
    plan.applications.some(({ product }) => materialOf(product.material)?.basis === 'memory')
  );
}

const figure = (value: string | number | undefined): string =>
  value === undefined ? '' : typeof value === 'number' ? figureText(value) : value;

/**
 * The row as a line of CSV, in the order of `planColumns`. Only texts that people wrote can hold what CSV must quote;
 * figures, dates and our own words cannot.
 */
export const csvLine = (row: PlanRow): string =>
  `${row.line},${csvCell(row.place)},${figure(row.ph)},${figure(row.ph_error)},${figure(row.low)},${figure(row.high)},` +
  `${figure(row.aim)},${figure(row.decision)},${csvCell(row.material)},${figure(row.step_1)},${figure(row.step_1_unit)},` +
  `${figure(row.rate)},${figure(row.rate_unit)},${figure(row.more_steps)},${figure(row.overshoot_chance)},` +
  `${figure(row.retest_from)},${figure(row.readings)},${figure(row.from_memory)},${csvCell(row.why)}`;
