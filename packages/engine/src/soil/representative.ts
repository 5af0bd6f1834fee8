import { textureClassOf } from '@sorrel/almanac/texture-classes';
import type { TextureClass } from '../evidence/soil-test.ts';
import type { Fraction } from '../units/si.ts';
import type { TextureParts } from './soil.ts';

/** Sand, silt and clay to reckon with when only a class is named: the middle of the class, or the soil behind the default curve. */
export function representativeParts(name: TextureClass): TextureParts {
  const row = textureClassOf(name);
  return { sand: row.sand / 100, silt: row.silt / 100, clay: row.clay / 100 };
}

/** Organic carbon to reckon with when only a class is named (MODEL; our judgement for the classes between). */
export const representativeCarbon = (name: TextureClass): Fraction => textureClassOf(name).organic_carbon / 100;

/** Coarse, medium or fine, as extension tables group the classes. */
export const textureGroup = (name: TextureClass): 'coarse' | 'medium' | 'fine' => textureClassOf(name).group;
