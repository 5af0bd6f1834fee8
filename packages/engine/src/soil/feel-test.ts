import { textureFeel } from '@sorrel/almanac/texture-feel';
import type { TextureClass } from '../evidence/soil-test.ts';
import type { Metre } from '../units/si.ts';
import { representativeParts } from './representative.ts';
import type { Texture } from './soil.ts';

/** Wet a spoon of soil, make a ball, press it out between thumb and finger. */
export interface FeelTest {
  /** Whether the moist soil holds together as a ball. */
  readonly ball: boolean;
  /** Length of the ribbon before it breaks; 0 when it makes none. */
  readonly ribbon: Metre;
  readonly feel: 'gritty' | 'smooth' | 'neither';
}

const ribbonOf = (ribbon: Metre): string =>
  ribbon <= 0 ? 'none' : ribbon < 0.025 ? 'short' : ribbon <= 0.05 ? 'medium' : 'long';

/**
 * Texture by feel (CSU_FEEL after Thien): ribbon under 2.5 cm, to 5 cm, longer. A reprint gives other lengths and is
 * believed wrong. Good to one class either way.
 */
export function textureByFeel(test: FeelTest): Texture {
  const row = textureFeel.find((one) => one.ribbon === ribbonOf(test.ribbon));
  const name = (test.ball && row ? row[test.feel] : 'sand') as TextureClass;
  return { name, parts: representativeParts(name), basis: 'feel' };
}
