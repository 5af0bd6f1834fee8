import { textureClasses } from '@sorrel/almanac/texture-classes';
import { describe, expect, it } from 'vitest';
import type { TextureClass } from '../evidence/soil-test.ts';
import { representativeParts } from './representative.ts';
import { textureClass } from './texture-class.ts';
import { normaliseParts, textureNotes, textureOf } from './texture-of.ts';

describe('textureOf', () => {
  it('scales a sum of 99 and says so', () => {
    // Horizon of a published table that adds up to 99 (PMC_TEX).
    const facts = { sand: 0.19, silt: 0.56, clay: 0.24 };
    expect(textureOf(facts)?.name).toBe('silt loam');
    expect(textureNotes(facts)).toContainEqual({ code: 'evidence.texture-sum', parameters: { sum: 99 } });
  });

  it('refuses a sum of 90', () => {
    expect(normaliseParts({ sand: 0.3, silt: 0.3, clay: 0.3 })).toBeUndefined();
    expect(textureOf({ sand: 0.3, silt: 0.3, clay: 0.3 })).toBeUndefined();
  });

  it('takes the sizes before the word and says when they differ', () => {
    const facts = { texture: 'loamy sand', sand: 0.799, silt: 0.1, clay: 0.101 } as const;
    expect(textureOf(facts)).toMatchObject({ name: 'sandy loam', basis: 'measured' });
    expect(textureNotes(facts).map((note) => note.code)).toEqual([
      'soil.texture-word-differs',
      'soil.texture-near-line',
    ]);
  });

  it('fills in the third size', () => {
    expect(textureOf({ sand: 0.4, clay: 0.2 })?.parts.silt).toBeCloseTo(0.4, 12);
    expect(textureOf({ clay: 0.2 })).toBeUndefined();
  });

  it('passes on a texture that is known already, and reckons a named class by a soil of that class', () => {
    const jar = { name: 'loam', parts: { sand: 0.4, silt: 0.4, clay: 0.2 }, basis: 'jar' } as const;
    expect(textureOf({ texture: jar })).toBe(jar);
    expect(textureOf({ texture: 'clay' })).toMatchObject({ name: 'clay', basis: 'class' });
    expect(textureOf({})).toBeUndefined();
  });
});

describe('representativeParts', () => {
  it('lies in its own class and adds up to 1', () => {
    for (const row of textureClasses) {
      const parts = representativeParts(row.class as TextureClass);
      expect(parts.sand + parts.silt + parts.clay).toBeCloseTo(1, 9);
      expect(textureClass(parts)).toBe(row.class);
    }
  });
});
