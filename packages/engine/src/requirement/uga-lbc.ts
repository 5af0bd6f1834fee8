import { described } from './described.ts';
import { impliedByCapacity } from './implied.ts';
import type { RequirementMethod } from './method.ts';
import { NOT_GIVEN } from './outcome.ts';
import { recordPublished } from './record.ts';

/**
 * How much the equilibrium capacity exceeds the 30-minute one: `1.4742 + 0.0023 LBC30`.
 *
 * @param lbc30 mg CaCO3/kg/pH
 * @source Thompson2010 (read): 25 Georgia soils, r2 0.82
 */
export const equilibriumRatio = (lbc30: number): number => 1.4742 + 0.0023 * lbc30;

/** Equilibrium lime buffer capacity, mg CaCO3/kg/pH, from the 30-minute value. [Thompson2010] */
export const equilibriumLbc = (lbc30: number): number => lbc30 * equilibriumRatio(lbc30);

/**
 * Lime requirement `LBCeq (T - pH)`, mg CaCO3 per kg of soil; never below 0. Both pH values by the same method.
 * In lb per acre of 2,000,000 lb soil it is twice the figure.
 */
export const lbcRequirement = (lbcEquilibrium: number, ph: number, target: number): number =>
  Math.max(0, lbcEquilibrium * (target - ph));

const about = described('uga-lbc');
const MG_PER_KG = 1e-6;

/** The only laboratory figure that is the buffer capacity itself. */
export const ugaLbc: RequirementMethod = {
  ...about,
  kind: 'capacity',
  direction: 'both',
  read(input, recorder) {
    const given = input.test.limeBufferCapacity;
    if (given === undefined) return NOT_GIVEN;
    const printed = given.value / MG_PER_KG;
    const value = given.kind === '30 min' ? equilibriumLbc(printed) : printed;
    if (recorder)
      recordPublished(recorder, ugaLbc, {
        formula: given.kind === '30 min' ? 'LBC30 (1.4742 + 0.0023 LBC30)' : 'LBCeq as printed',
        terms: [
          {
            symbol: given.kind === '30 min' ? 'LBC30' : 'LBCeq',
            value: printed,
            unit: 'mg CaCO3/kg/pH',
            origin: 'entered',
          },
        ],
        value,
        unit: 'mg CaCO3/kg/pH',
      });
    return impliedByCapacity(
      ugaLbc,
      input,
      { value, unit: 'mg CaCO3/kg/pH', capacity: value * MG_PER_KG, from: 4.5, to: 6.5 },
      recorder,
    );
  },
};
