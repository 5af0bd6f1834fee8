import type { GardenTableRow } from '../../packages/almanac/src/garden-tables.ts';
import { chartUnit } from '../../packages/engine/src/requirement/garden-charts.ts';
import {
  chartFigure,
  type NswTarget,
  nswEcecTonnePerHectare,
  nswPrintedCell,
  type UkSoil,
  type UkUse,
  ukLimeFactor,
  ukOptimumPh,
  ukTargetPh,
  ukTonnePerHectare,
} from '../../packages/engine/src/requirement/index.ts';
import { TONNE_PER_HECTARE } from '../../packages/engine/src/requirement/published-units.ts';
import type { Adapter, CheckCase } from '../adapter.ts';
import { input, isFrom, need, shaped, words } from './lime-shape.ts';

/** Added to the optimum to give the target of the lime factor. [RB209] */
const MARGIN = 0.2;
const usualTarget: Readonly<Record<UkUse, number>> = { arable: 6.5 + MARGIN, grass: 6 + MARGIN };

const ukSoil = (text: string): UkSoil =>
  /sands|very sandy/.test(text) ? 'sands' : /light|silt loam/.test(text) ? 'light' : 'medium and clay';
/** The textbook calls very sandy soil light, and loam or medium what the lime factor calls light. */
const textbookSoil = (text: string): UkSoil =>
  /light|sand/.test(text) ? 'sands' : /heavy|clay/.test(text) ? 'medium and clay' : 'light';

const ukUse = (check: CheckCase): UkUse => (words(check, 'use').startsWith('grass') ? 'grass' : 'arable');

const charts: Readonly<Record<string, string>> = {
  'Chart-A': 'chart-A',
  'Chart-B': 'chart-B',
  'Chart-C': 'chart-C',
  'Chart-D': 'chart-D',
  'WA-rule': 'wa-rule',
};
const chartOf = (check: CheckCase): string | undefined =>
  Object.entries(charts).find(([source]) => isFrom(check, source))?.[1];

/** Unit a chart prints in. */
const chartUnits: Readonly<Record<string, GardenTableRow['unit']>> = {
  'chart-A': 'lb/100sqft',
  'chart-B': 'lb/1000sqft',
  'chart-C': 'lb/1000sqft',
  'chart-D': 'lb/1000sqft',
  'wa-rule': 'g/m2',
};

/** Rate of a chart between two pH; where no pH is given the chart's one pH unit. */
function chartRate(check: CheckCase): number {
  const chart = chartOf(check) ?? '';
  const unit = chartUnits[chart] ?? 'g/m2';
  const from = input(check, 'pH') ?? 5.5;
  const to = input(check, 'target') ?? from + 1;
  return (chartFigure(chart, words(check, 'texture'), from, to, unit) ?? Number.NaN) * chartUnit(unit);
}

const factorRate = (check: CheckCase): number =>
  ukTonnePerHectare(need(check, 'factor'), need(check, 'pH'), need(check, 'target')) * TONNE_PER_HECTARE;

export const limeTables: readonly Adapter[] = [
  shaped({
    name: 'New South Wales table',
    needs: ['ECEC', 'from', 'to'],
    rate: (check) => {
      const [ecec, from, to] = [need(check, 'ECEC'), need(check, 'from'), need(check, 'to')];
      return (
        (nswPrintedCell(ecec, from, to) ?? nswEcecTonnePerHectare(ecec, from, to as NswTarget)) * TONNE_PER_HECTARE
      );
    },
  }),
  shaped({
    name: 'United Kingdom lime factor',
    needs: ['soil', 'use', 'pH'],
    may: ['target'],
    rate: (check) =>
      ukTonnePerHectare(
        ukLimeFactor(ukSoil(words(check, 'soil')), ukUse(check)),
        need(check, 'pH'),
        input(check, 'target') ?? usualTarget[ukUse(check)],
      ) * TONNE_PER_HECTARE,
  }),
  shaped({
    name: 'United Kingdom textbook table',
    needs: ['texture', 'pH', 'target'],
    when: (check) => isFrom(check, 'AdamsEtAl'),
    rate: (check) =>
      ukTonnePerHectare(
        ukLimeFactor(textbookSoil(words(check, 'texture')), 'arable'),
        need(check, 'pH'),
        need(check, 'target') + MARGIN,
      ) * TONNE_PER_HECTARE,
  }),
  shaped({
    name: 'lime factor over an area',
    needs: ['factor', 'pH', 'target'],
    may: ['area_m2'],
    rate: factorRate,
    figures: (check) => ({ kg: factorRate(check) * (input(check, 'area_m2') ?? Number.NaN) }),
  }),
  shaped({
    name: 'United Kingdom target pH',
    needs: ['system', 'soil'],
    figures: (check) => {
      const [system, soil] = [words(check, 'system'), words(check, 'soil') as 'mineral' | 'peaty' | 'organic'];
      const [optimum, target] = [ukOptimumPh(system, soil), ukTargetPh(system, soil)];
      return { optimum, optimum_pH: optimum, target, target_pH: target };
    },
  }),
  shaped({
    name: 'garden lime chart',
    needs: ['texture'],
    may: ['pH', 'target'],
    when: (check) => chartOf(check) !== undefined,
    rate: chartRate,
  }),
];
