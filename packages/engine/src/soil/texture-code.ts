import { textureRules } from '@sorrel/almanac/texture-rules';
import type { TextureClass } from '../evidence/soil-test.ts';

const codes = new Map(textureRules.map((row) => [row.class as TextureClass, row.code]));
const names = new Map(textureRules.map((row) => [row.code, row.class as TextureClass]));

/** Short code of a USDA class, e.g. `SIL` for silt loam. */
export const textureCode = (name: TextureClass): string => codes.get(name) ?? '';

/** USDA class of a code or a name, however it is written; undefined for another word. */
export function textureNamed(word: string): TextureClass | undefined {
  const plain = word
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ');
  if (codes.has(plain as TextureClass)) return plain as TextureClass;
  return names.get(plain.toUpperCase());
}
