import { type GardenTableRow, gardenTableRows } from '@sorrel/almanac/garden-tables';
import type { Ph } from '../units/si.ts';
import { type Line, lineOf, valueAt } from './line.ts';
import { LB_PER_100_SQ_FT, LB_PER_1000_SQ_FT } from './published-units.ts';
import type { Grade } from './texture-only.ts';

const sizes: Readonly<Record<GardenTableRow['unit'], number>> = {
  'lb/100sqft': LB_PER_100_SQ_FT,
  'lb/1000sqft': LB_PER_1000_SQ_FT,
  'g/m2': 1e-3,
};

/** Size of a chart's unit, kg/m². */
export const chartUnit = (unit: GardenTableRow['unit']): number => sizes[unit];

interface Chart {
  readonly name: string;
  /** Depth the chart is for; undefined when it does not say. */
  readonly depth: number | undefined;
  /** Rate from a starting pH to 6.5, kg/m², by texture grade. */
  readonly steps: ReadonlyMap<Grade, Line>;
  /** Rate for one pH unit, kg/m², by texture grade. */
  readonly perUnit: ReadonlyMap<Grade, number>;
}

/** The pH all garden charts lime to. */
export const CHART_TARGET: Ph = 6.5;

/** A chart's row for one unit of pH, whichever way the chart words it. */
const isPerUnit = (row: GardenTableRow): boolean =>
  row.kind === 'per unit' || (row.note?.includes('one pH unit') ?? false);

const chartOf = (name: string): Chart => {
  const rows = gardenTableRows.filter((row) => row.chart === name);
  const grades = [...new Set(rows.map((row) => row.class))];
  const line = (grade: Grade): Line =>
    lineOf([
      ...rows.flatMap((row) =>
        row.class === grade && row.ph_from !== undefined ? [[row.ph_from, row.value * sizes[row.unit]] as const] : [],
      ),
      [CHART_TARGET, 0] as const,
    ]);
  const stepped = rows.filter((row) => row.kind === 'step' && !isPerUnit(row));
  const depth = rows[0]?.depth_cm;
  return {
    name,
    depth: depth === undefined ? undefined : depth / 100,
    steps: new Map(stepped.length === 0 ? [] : grades.map((grade) => [grade, line(grade)])),
    perUnit: new Map(rows.filter(isPerUnit).map((row) => [row.class, row.value * sizes[row.unit]])),
  };
};

const used: readonly Chart[] = [
  ...new Set(gardenTableRows.filter((row) => row.used === 'yes').map((row) => row.chart)),
].map(chartOf);

/**
 * What every garden chart that covers the case asks, kg/m² scaled to 1 m of depth so that they compare.
 *
 * @param ph 4.0 to below 6.5
 * @param assumedDepth depth taken for a chart that states none, m
 * @source Chart-A, Chart-B, Chart-C, Chart-D (read), WA-rule (memory); the chart that asks 3 to 5 times the others is left out
 */
export function chartRatesPerMetre(grade: Grade, ph: Ph, assumedDepth: number): number[] {
  const rates: number[] = [];
  for (const chart of used) {
    const line = chart.steps.get(grade);
    const unit = chart.perUnit.get(grade);
    const rate = line !== undefined ? valueAt(line, ph) : unit === undefined ? Number.NaN : unit * (CHART_TARGET - ph);
    if (rate > 0) rates.push(rate / (chart.depth ?? assumedDepth));
  }
  return rates.sort((a, b) => a - b);
}

/**
 * One chart's own figure in its own unit: a printed cell, or on the straight line between two.
 *
 * @param texture as the chart words it
 * @param to 6.5 for charts that lime to 6.5; one unit above `from` for charts by pH unit
 * @returns undefined when the chart has no such texture or unit
 */
export function chartFigure(
  chart: string,
  texture: string,
  from: Ph,
  to: Ph,
  unit: GardenTableRow['unit'],
): number | undefined {
  const rows = gardenTableRows.filter((row) => row.chart === chart && row.texture === texture && row.unit === unit);
  const perUnit = rows.find(isPerUnit);
  if (perUnit !== undefined) return perUnit.value * (to - from);
  const points = rows.flatMap((row) =>
    row.ph_from !== undefined && row.ph_to === to ? [[row.ph_from, row.value] as const] : [],
  );
  if (points.length === 0) return undefined;
  const value = valueAt(lineOf(points), from);
  return Number.isNaN(value) ? undefined : value;
}
