import type { Fraction } from '../units/si.ts';
import type { TextureParts } from './soil.ts';

export type UkTextureClass =
  | 'sand'
  | 'loamy sand'
  | 'sandy loam'
  | 'sandy silt loam'
  | 'silt loam'
  | 'sandy clay loam'
  | 'clay loam'
  | 'silty clay loam'
  | 'sandy clay'
  | 'clay'
  | 'silty clay'
  | 'organic';

const percent = (part: number, sum: number): number => Math.round((part / sum) * 1e8) / 1e6;

/**
 * UK texture class (SSEW_1974, from memory; the organic limit AHDB_TEX). Sand counts from 0.06 mm here, not from 0.05 as
 * in the USDA classes, so a class of one system is not carried over to the other.
 *
 * @param parts sand 0.06–2 mm, silt 0.002–0.06 mm, clay; any positive sum
 * @param organicMatter over 20 % makes the soil organic, whatever its sizes
 */
export function textureClassUk(parts: TextureParts, organicMatter?: Fraction): UkTextureClass {
  if (organicMatter !== undefined && organicMatter > 0.2) return 'organic';
  const sum = parts.sand + parts.silt + parts.clay;
  if (!(sum > 0)) throw new RangeError('sand, silt and clay must not all be 0');
  const sand = percent(parts.sand, sum);
  const silt = percent(parts.silt, sum);
  const clay = percent(parts.clay, sum);
  if (silt + 1.5 * clay < 15) return 'sand';
  if (silt + 2 * clay < 30) return 'loamy sand';
  if (clay < 18) return sand >= 50 ? 'sandy loam' : sand >= 20 ? 'sandy silt loam' : 'silt loam';
  if (sand >= 50) return clay < 30 ? 'sandy clay loam' : 'sandy clay';
  if (clay < 35) return sand >= 20 ? 'clay loam' : 'silty clay loam';
  return sand >= 20 || clay >= 55 ? 'clay' : 'silty clay';
}
