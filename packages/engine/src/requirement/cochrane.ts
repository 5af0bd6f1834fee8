import { described } from './described.ts';
import { implied } from './implied.ts';
import { ALUMINIUM_FREE, HIGHEST_TARGET } from './kamprath.ts';
import type { RequirementMethod } from './method.ts';
import { NOT_GIVEN, NOT_MINERAL, TARGET_TOO_HIGH, TOO_CLOSE } from './outcome.ts';
import { CACO3_PER_MOL } from './published-units.ts';
import { recordPublished } from './record.ts';
import { nearestTarget } from './targets.ts';

/** Result of Cochrane's equation, with the multiplier it took. */
export interface CochraneResult {
  /** With 1.5, before the branch. */
  readonly first: number;
  readonly multiplier: 1.5 | 2;
  readonly final: number;
}

/**
 * Lime to bring aluminium saturation down to what the crop bears: `1.5 (Al - RAS (Al + Ca + Mg)/100)`; when that
 * exceeds Al itself, 2.0 stands for 1.5. Never below 0. All in meq/100 g (cmol_c/kg).
 *
 * @param tolerated RAS, aluminium saturation the crop bears, per cent 0 to 100
 * @source Cochrane1980 (read)
 */
export function cochraneMeq(aluminium: number, calcium: number, magnesium: number, tolerated: number): CochraneResult {
  const excess = Math.max(0, aluminium - (tolerated * (aluminium + calcium + magnesium)) / 100);
  const first = 1.5 * excess;
  return first > aluminium ? { first, multiplier: 2, final: 2 * excess } : { first, multiplier: 1.5, final: first };
}

/** t CaCO3/ha to 10 cm of soil for each meq/100 g: the bulk density in g/cm³. [Cochrane1980] */
export const cochraneTonnePerHectare = (meq: number, bulkDensityGramPerCm3: number): number =>
  meq * bulkDensityGramPerCm3;

const about = described('cochrane');
const CMOL_PER_MOL = 100;

/** Garden crops are taken to bear no aluminium (RAS 0), which is what a pH of 5.5 means. */
export const cochrane: RequirementMethod = {
  ...about,
  kind: 'aluminium',
  direction: 'raise',
  read(input, recorder) {
    const { aluminium, calcium, magnesium } = input.test;
    if (aluminium === undefined || calcium === undefined || magnesium === undefined) return NOT_GIVEN;
    if (input.medium !== 'mineral') return NOT_MINERAL;
    if (input.targetPh > HIGHEST_TARGET) return TARGET_TOO_HIGH;
    const target = nearestTarget(ALUMINIUM_FREE, input.targetPh, input.present.mean);
    if (target === undefined) return TOO_CLOSE;
    const { final, multiplier } = cochraneMeq(
      aluminium * CMOL_PER_MOL,
      calcium * CMOL_PER_MOL,
      magnesium * CMOL_PER_MOL,
      0,
    );
    if (recorder)
      recordPublished(recorder, cochrane, {
        formula: `${multiplier} (Al - RAS (Al + Ca + Mg)/100)`,
        terms: [
          { symbol: 'Al', value: aluminium * CMOL_PER_MOL, unit: 'meq/100 g', origin: 'entered' },
          { symbol: 'Ca', value: calcium * CMOL_PER_MOL, unit: 'meq/100 g', origin: 'entered' },
          { symbol: 'Mg', value: magnesium * CMOL_PER_MOL, unit: 'meq/100 g', origin: 'entered' },
          { symbol: 'RAS', value: 0, unit: '%', origin: 'choice' },
        ],
        value: final,
        unit: 'meq/100 g',
      });
    return implied(
      cochrane,
      input,
      {
        value: final,
        unit: 'meq/100 g',
        rate: (final / CMOL_PER_MOL) * CACO3_PER_MOL,
        allowance: about.allowance,
        targetPh: target,
        soilMass: 1,
      },
      recorder,
    );
  },
};
