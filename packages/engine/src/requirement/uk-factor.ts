import { type UkFactorRow, ukFactors } from '@sorrel/almanac/uk-factors';
import { ukTargets } from '@sorrel/almanac/uk-targets';
import type { TextureClass } from '../evidence/soil-test.ts';
import type { Ph } from '../units/si.ts';
import { described, publishedSoilMass } from './described.ts';
import { implied } from './implied.ts';
import type { RequirementMethod } from './method.ts';
import { beyond, NOT_GIVEN, NOT_MINERAL, TOO_CLOSE } from './outcome.ts';
import { TONNE_PER_HECTARE } from './published-units.ts';
import { recordPublished } from './record.ts';
import { targetWithin } from './targets.ts';

export type UkSoil = UkFactorRow['soil'];
export type UkUse = UkFactorRow['use'];

/** Lime factor, t/ha of ground limestone per pH unit. [RB209, memory] */
export function ukLimeFactor(soil: UkSoil, use: UkUse): number {
  const row = ukFactors.find((one) => one.soil === soil && one.use === use);
  if (row === undefined) throw new RangeError(`no lime factor for ${soil} under ${use}`);
  return row.t_per_ha_per_ph;
}

/**
 * `F (T - pH)`, t/ha of ground limestone; never below 0.
 *
 * @param target optimum + 0.2
 * @source RB209 (from memory); agrees with every cell of a table read in AdamsEtAl
 */
export const ukTonnePerHectare = (factor: number, ph: Ph, target: Ph): number => Math.max(0, factor * (target - ph));

export type UkTargetSoil = 'mineral' | 'peaty' | 'organic';

const targetRow = (system: string, soil: UkTargetSoil) =>
  ukTargets.find((row) => row.system === system && row.soil === soil);

/** Optimum pH of a cropping system; undefined when the table has no such row. [AHDB, read] */
export const ukOptimumPh = (system: string, soil: UkTargetSoil): Ph | undefined => targetRow(system, soil)?.optimum_ph;

/** Target pH of a cropping system, optimum + 0.2; undefined when the table has no such row. [AHDB, read] */
export const ukTargetPh = (system: string, soil: UkTargetSoil): Ph | undefined => targetRow(system, soil)?.target_ph;

/** British soil group of a texture class. */
export const ukSoilOf = (texture: TextureClass): UkSoil =>
  texture === 'sand' || texture === 'loamy sand'
    ? 'sands'
    : texture === 'sandy loam' || texture === 'silt loam' || texture === 'silt'
      ? 'light'
      : 'medium and clay';

const about = described('uk-factor');
const OUTSIDE = beyond(about.domain);
const SOIL_MASS = publishedSoilMass(about.id);
const UNIT = 't/ha ground limestone, 20 cm';
const factors: Readonly<Record<UkSoil, number>> = {
  sands: ukLimeFactor('sands', 'arable'),
  light: ukLimeFactor('light', 'arable'),
  'medium and clay': ukLimeFactor('medium and clay', 'arable'),
};
const LOWEST_PH = 4.5;
const HIGHEST_TARGET = 6.7;

/** Dug ground is read by the arable factor. */
export const ukFactor: RequirementMethod = {
  ...about,
  kind: 'texture',
  direction: 'raise',
  read(input, recorder) {
    if (input.texture === undefined) return NOT_GIVEN;
    if (input.medium !== 'mineral') return NOT_MINERAL;
    const ph = input.present.mean;
    if (ph < LOWEST_PH) return OUTSIDE;
    const target = targetWithin(LOWEST_PH, HIGHEST_TARGET, input.targetPh, ph);
    if (target === undefined) return TOO_CLOSE;
    const soil = ukSoilOf(input.texture.name);
    const value = ukTonnePerHectare(factors[soil], ph, target);
    if (recorder)
      recordPublished(recorder, ukFactor, {
        formula: 'F (T - pH)',
        terms: [
          { symbol: 'F', value: factors[soil], unit: `t/ha/pH, ${soil}, arable`, origin: 'table', source: 'RB209' },
          { symbol: 'T', value: target, unit: 'pH', origin: 'choice' },
          { symbol: 'pH', value: ph, unit: 'pH', origin: 'entered' },
        ],
        value,
        unit: UNIT,
      });
    return implied(
      ukFactor,
      input,
      {
        value,
        unit: UNIT,
        rate: value * TONNE_PER_HECTARE,
        allowance: about.allowance,
        targetPh: target,
        soilMass: SOIL_MASS,
      },
      recorder,
    );
  },
};
