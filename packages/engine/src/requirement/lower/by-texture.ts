import { acidificationParameter } from '@sorrel/almanac/acidification-parameters';
import type { TextureClass } from '../../evidence/soil-test.ts';
import type { MolPerKg } from '../../units/si.ts';
import type { RequirementMethod } from '../method.ts';
import { NOT_GIVEN } from '../outcome.ts';
import { LEAST_GAP } from '../targets.ts';
import { textureOf } from './below.ts';
import { readCapacity } from './capacity-reading.ts';
import { limyReason } from './limy.ts';

type Group = 'sand' | 'sandy loam' | 'loam' | 'clay';

const GROUP: Readonly<Record<TextureClass, Group>> = {
  sand: 'sand',
  'loamy sand': 'sand',
  'sandy loam': 'sandy loam',
  loam: 'loam',
  'silt loam': 'loam',
  silt: 'loam',
  'sandy clay loam': 'loam',
  'clay loam': 'clay',
  'silty clay loam': 'clay',
  'sandy clay': 'clay',
  'silty clay': 'clay',
  clay: 'clay',
};

const row = (group: Group) => acidificationParameter(`beta ${group}`);

/**
 * Buffer capacity to lower pH, by texture class: 12, 24, 34 or 50 mmol/kg/pH, the middle of the acid-side tables.
 *
 * @returns mol H+/kg/pH, at eta 1 as the tables are; `undefined` for a word that is no texture class
 * @source acidification note, section 2, from MSU-R, OMAFRA, UTK, EXT (derived)
 */
export function capacityByTexture(texture: string): MolPerKg | undefined {
  const group = (GROUP as Readonly<Record<string, Group>>)[texture];
  return group && row(group).value / 1000;
}

/** The default for lowering when nothing but the texture is known. */
export const byTexture: RequirementMethod = {
  id: 'lower-by-texture',
  title: 'resistance by texture, the middle of the published sulfur tables',
  kind: 'texture',
  direction: 'lower',
  regions: [],
  referenceDepth: null,
  allowance: 1,
  sdLog: { matching: 0.45, foreign: 0.6 },
  domain: 'mineral soil without free lime; tables lie from half to twice as high, one of them to 3.6 times',
  sources: ['MSU-R', 'OMAFRA', 'UTK', 'EXT'],
  basis: 'derived',
  read(input, recorder) {
    const texture = textureOf(input);
    const beta = texture === undefined ? undefined : capacityByTexture(texture);
    if (texture === undefined || beta === undefined || input.present.mean - input.targetPh < LEAST_GAP)
      return NOT_GIVEN;
    if (input.medium === 'organic' || input.medium === 'soilless')
      return { state: 'outside', reason: { code: 'lower.not-for-medium', parameters: { table: byTexture.title } } };
    const limy = limyReason(input, byTexture.title);
    if (limy !== undefined) return { state: 'outside', reason: limy };
    return readCapacity(byTexture, input, beta, recorder, {
      formula: 'middle of the published tables for this class of soil',
      terms: [
        { symbol: 'texture', value: texture, unit: '1', origin: 'entered' },
        {
          symbol: 'beta',
          value: row(GROUP[texture as TextureClass]).value,
          unit: 'mmol/kg/pH',
          origin: 'table',
          source: 'MSU-R',
        },
      ],
    });
  },
};
