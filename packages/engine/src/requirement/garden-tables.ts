import { described, publishedSoilMass } from './described.ts';
import { CHART_TARGET, chartRatesPerMetre } from './garden-charts.ts';
import { implied } from './implied.ts';
import type { RequirementMethod } from './method.ts';
import { beyond, NOT_GIVEN, NOT_MINERAL, TOO_CLOSE } from './outcome.ts';
import { FURROW_SLICE_DENSITY } from './published-units.ts';
import { recordPublished } from './record.ts';
import { nearestTarget } from './targets.ts';
import { gradeOf } from './texture-only.ts';

const about = described('garden-tables');
const OUTSIDE = beyond(about.domain);
const SOIL_MASS = publishedSoilMass(about.id);
const DEPTH = SOIL_MASS / FURROW_SLICE_DENSITY;
const UNIT = 'g/m2, 6 in';
const targets = [CHART_TARGET] as const;

/** The middle of the garden charts: a cross-check when nothing better than a texture is known. */
export const gardenTables: RequirementMethod = {
  ...about,
  kind: 'texture',
  direction: 'raise',
  read(input, recorder) {
    if (input.texture === undefined) return NOT_GIVEN;
    if (input.medium !== 'mineral') return NOT_MINERAL;
    const ph = input.present.mean;
    const target = nearestTarget(targets, input.targetPh, ph);
    if (target === undefined) return TOO_CLOSE;
    if (ph < 4) return OUTSIDE;
    const rates = chartRatesPerMetre(gradeOf(input.texture.name), ph, DEPTH);
    const middle = rates.length >> 1;
    const upper = rates[middle];
    const lower = rates[rates.length % 2 === 0 ? middle - 1 : middle];
    if (upper === undefined || lower === undefined) return OUTSIDE;
    const rate = ((lower + upper) / 2) * DEPTH;
    if (recorder)
      recordPublished(recorder, gardenTables, {
        formula: 'median of the charts that cover texture and pH, scaled to 6 in',
        terms: [
          { symbol: 'texture', value: input.texture.name, unit: '', origin: 'entered' },
          { symbol: 'pH', value: ph, unit: 'pH', origin: 'entered' },
          { symbol: 'charts', value: rates.length, unit: '1', origin: 'table', source: 'Chart-A' },
        ],
        value: rate * 1000,
        unit: UNIT,
      });
    return implied(
      gardenTables,
      input,
      {
        value: rate * 1000,
        unit: UNIT,
        rate,
        allowance: about.allowance,
        targetPh: target,
        soilMass: SOIL_MASS,
      },
      recorder,
    );
  },
};
