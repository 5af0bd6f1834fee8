import { bulkDensity } from '@sorrel/almanac/bulk-density';
import type { Recorder } from '../derivation/derivation.ts';
import type { TextureClass } from '../evidence/soil-test.ts';
import type { Fraction, KgPerM3 } from '../units/si.ts';
import type { Medium, Texture } from './soil.ts';

/** g/cm³ as printed to kg/m³. */
const SI = 1000;

const middle = (kind: string, name: string): KgPerM3 => {
  const row = bulkDensity.find((one) => one.kind === kind && one.name === name);
  if (row === undefined) throw new RangeError(`no bulk density of ${name}`);
  return Math.round(((row.low + row.high) / 2) * SI * 1e6) / 1e6;
};

const byTexture = new Map(
  bulkDensity.filter((row) => row.kind === 'texture').map((row) => [row.name, middle('texture', row.name)]),
);
const MIX = middle('medium', 'mix');
const ORGANIC = middle('medium', 'organic');
const SOILLESS = middle('medium', 'soilless');
/** Taken off for ground that is dug. */
const DUG = middle('allowance', 'dug');
/** Organic matter over which mineral soil gets lighter, down to organic ground at 20 %. */
const HUMUS_FROM: Fraction = 0.05;
const HUMUS_TO: Fraction = 0.2;

/** What the density of a place may be known from. */
export interface DensityFacts {
  readonly medium: Medium;
  readonly bulkDensity?: KgPerM3 | undefined;
  readonly texture?: Texture | TextureClass | undefined;
  readonly organicMatter?: Fraction | undefined;
  /** False for lawn and other ground that nobody digs; the printed set is for such ground. Default true. */
  readonly dug?: boolean | undefined;
}

export interface DensityEstimate {
  readonly value: KgPerM3;
  /** Standard deviation of its natural logarithm; our judgement. */
  readonly sdLog: number;
  readonly how: 'measured' | 'texture' | 'medium';
}

/** Mineral ground: the texture's printed figure, 200 kg/m³ lighter when dug, lighter still with much organic matter. */
function mineral(facts: DensityFacts): KgPerM3 {
  const name = typeof facts.texture === 'string' ? facts.texture : facts.texture?.name;
  const printed = byTexture.get(name ?? 'loam') ?? middle('texture', 'loam');
  const bare = facts.dug === false ? printed : printed - DUG;
  const humus = Math.min(1, Math.max(0, ((facts.organicMatter ?? 0) - HUMUS_FROM) / (HUMUS_TO - HUMUS_FROM)));
  return bare + humus * (ORGANIC - bare);
}

/**
 * Dry bulk density of a bed, kg/m³. A measured figure wins. Else mineral ground goes by texture class (BD-TEX, a weak
 * calculated set that is 0.1 to 0.3 g/cm³ too dense for dug beds, so 0.2 is taken off unless nobody digs; loam when the
 * texture is unknown), and from 5 to 20 % organic matter falls in a straight line to that of organic ground (our judgement).
 * Mixes, organic ground and soilless media have their own figures. The lighter reading gives the smaller dose.
 */
export function bulkDensityOf(facts: DensityFacts, recorder?: Recorder): DensityEstimate {
  const estimate: DensityEstimate =
    facts.bulkDensity !== undefined
      ? { value: facts.bulkDensity, sdLog: 0.05, how: 'measured' }
      : facts.medium === 'mineral'
        ? { value: mineral(facts), sdLog: facts.texture === undefined ? 0.15 : 0.12, how: 'texture' }
        : facts.medium === 'mix'
          ? { value: MIX, sdLog: 0.2, how: 'medium' }
          : facts.medium === 'organic'
            ? { value: ORGANIC, sdLog: 0.3, how: 'medium' }
            : { value: SOILLESS, sdLog: 0.2, how: 'medium' };
  if (recorder)
    recorder.step({
      symbol: 'BD',
      title: 'Dry bulk density of the layer',
      formula:
        estimate.how === 'measured'
          ? 'BD as measured'
          : estimate.how === 'texture'
            ? 'BD of the texture class, less 200 when dug, less with much organic matter'
            : 'BD of the medium',
      terms: [
        { symbol: 'medium', value: facts.medium, unit: '', origin: 'entered' },
        ...(facts.texture === undefined
          ? []
          : [
              {
                symbol: 'texture',
                value: typeof facts.texture === 'string' ? facts.texture : facts.texture.name,
                unit: '',
                origin: 'entered',
              } as const,
            ]),
      ],
      value: estimate.value,
      unit: 'kg/m3',
      sources:
        estimate.how === 'measured'
          ? ['SORREL']
          : estimate.how === 'texture'
            ? ['BD-TEX', 'BD-MN', 'SORREL']
            : facts.medium === 'soilless'
              ? ['ARK_GH']
              : ['TEXT', 'SORREL'],
      basis: estimate.how === 'medium' && facts.medium !== 'soilless' ? 'memory' : 'judgement',
    });
  return estimate;
}
