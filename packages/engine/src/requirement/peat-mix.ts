import { PEAT_PER_VOLUME } from '../soil/soilless.ts';
import { described } from './described.ts';
import { impliedByCapacity } from './implied.ts';
import type { RequirementMethod } from './method.ts';
import { NOT_GIVEN } from './outcome.ts';
import { recordPublished } from './record.ts';

const about = described('peat-mix');
const UNIT = 'g CaCO3/L/pH';

/**
 * From pH 4.5 to 6.1, about 45 meq per litre and pH unit; single steps run from 34 to 60. [COMPEAT, derived]
 * Peat, bark and coir are counted by volume; the bulk density of the layer only carries the figure there and back.
 */
export const peatMix: RequirementMethod = {
  ...about,
  kind: 'medium',
  direction: 'both',
  read(input, recorder) {
    if (input.medium !== 'soilless') return NOT_GIVEN;
    if (recorder)
      recordPublished(recorder, peatMix, {
        formula: 'LBC by volume / bulk density',
        terms: [
          { symbol: 'LBC by volume', value: PEAT_PER_VOLUME, unit: UNIT, origin: 'table', source: 'COMPEAT' },
          { symbol: 'bulk density', value: input.layer.bulkDensity, unit: 'kg/m3', origin: 'entered' },
        ],
        value: PEAT_PER_VOLUME,
        unit: UNIT,
      });
    return impliedByCapacity(
      peatMix,
      input,
      {
        value: PEAT_PER_VOLUME,
        unit: UNIT,
        capacity: PEAT_PER_VOLUME / input.layer.bulkDensity,
        from: 4.5,
        to: 6.1,
      },
      recorder,
    );
  },
};
