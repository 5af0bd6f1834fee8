import type { Ph } from '../units/si.ts';
import { described } from './described.ts';
import { impliedByCapacity } from './implied.ts';
import type { RequirementMethod } from './method.ts';
import { beyond, NOT_GIVEN } from './outcome.ts';
import { INCH, SHORT_TON_PER_ACRE } from './published-units.ts';
import { recordPublished } from './record.ts';

const PER_PH = 5;
const GATE = 5.3;

/**
 * Tri-State rule for organic soil: `32.9 - 5 pH`, short ton per acre, 8 in. Nothing at or above pH 5.3, where the
 * line itself would still ask 6.4.
 *
 * @source TriState1995 (from memory)
 */
export const triStateOrganicShortTonPerAcre = (ph: Ph): number => (ph < GATE ? Math.max(0, 32.9 - PER_PH * ph) : 0);

const about = described('tristate-organic');
const OUTSIDE = beyond(about.domain);
const DEPTH = 8 * INCH;

/**
 * The soil's resistance is read from the slope, 5 short ton a pH unit. The 6.4 that the line asks at its own target
 * is a margin, not resistance, and would grow without bound when divided by a small gap.
 */
export const tristateOrganic: RequirementMethod = {
  ...about,
  kind: 'medium',
  direction: 'raise',
  read(input, recorder) {
    if (input.medium !== 'organic') return NOT_GIVEN;
    const ph = input.present.mean;
    if (!(ph < GATE)) return OUTSIDE;
    const value = triStateOrganicShortTonPerAcre(ph);
    if (recorder)
      recordPublished(recorder, tristateOrganic, {
        formula: '32.9 - 5 pH',
        terms: [{ symbol: 'pH', value: ph, unit: 'pH', origin: 'entered' }],
        value,
        unit: 'short ton/acre, 8 in',
      });
    const capacity = (PER_PH * SHORT_TON_PER_ACRE) / about.allowance / (DEPTH * input.layer.bulkDensity);
    return impliedByCapacity(
      tristateOrganic,
      input,
      { value, unit: 'short ton/acre, 8 in', capacity, from: 4.5, to: GATE },
      recorder,
    );
  },
};
