import type { Message } from '../derivation/message.ts';
import type { TextureClass } from '../evidence/soil-test.ts';
import { addsUp } from '../evidence/texture-sum.ts';
import type { Fraction } from '../units/si.ts';
import { representativeParts } from './representative.ts';
import type { Texture, TextureParts } from './soil.ts';
import { nearbyClasses, textureClass } from './texture-class.ts';

/** What a test or a place may say of its texture. */
export interface TextureFacts {
  readonly texture?: TextureClass | Texture | undefined;
  readonly sand?: Fraction | undefined;
  readonly silt?: Fraction | undefined;
  readonly clay?: Fraction | undefined;
}

/** Scaled to a sum of 1; undefined when the sum misses 1 by more than 1 %. */
export function normaliseParts(parts: TextureParts): TextureParts | undefined {
  const sum = parts.sand + parts.silt + parts.clay;
  if (!addsUp(sum) || parts.sand < 0 || parts.silt < 0 || parts.clay < 0) return undefined;
  return { sand: parts.sand / sum, silt: parts.silt / sum, clay: parts.clay / sum };
}

/** All three sizes, the third from the other two when one is missing. */
function sizes(facts: TextureFacts): TextureParts | undefined {
  const { sand, silt, clay } = facts;
  if (sand !== undefined && silt !== undefined && clay !== undefined) return normaliseParts({ sand, silt, clay });
  const rest = 1 - (sand ?? 0) - (silt ?? 0) - (clay ?? 0);
  if (rest < 0) return undefined;
  if (silt !== undefined && clay !== undefined) return { sand: rest, silt, clay };
  if (sand !== undefined && clay !== undefined) return { sand, silt: rest, clay };
  if (sand !== undefined && silt !== undefined) return { sand, silt, clay: rest };
  return undefined;
}

/**
 * Texture of a test or a place: measured sizes first, whatever the word beside them says; else the named class, with a
 * representative soil of that class.
 *
 * @returns undefined when neither is known, or when the sizes do not add up
 */
export function textureOf(facts: TextureFacts): Texture | undefined {
  const parts = sizes(facts);
  if (parts !== undefined) return { name: textureClass(parts), parts, basis: 'measured' };
  if (facts.texture === undefined) return undefined;
  if (typeof facts.texture !== 'string') return facts.texture;
  return { name: facts.texture, parts: representativeParts(facts.texture), basis: 'class' };
}

/** What must be said about the texture: a sum scaled to 100 %, a word that differs from the sizes, a line close by. */
export function textureNotes(facts: TextureFacts): Message[] {
  const notes: Message[] = [];
  const { sand, silt, clay } = facts;
  if (sand !== undefined && silt !== undefined && clay !== undefined) {
    const sum = Math.round((sand + silt + clay) * 1000) / 10;
    if (sum !== 100) notes.push({ code: 'evidence.texture-sum', parameters: { sum } });
  }
  const texture = textureOf(facts);
  if (texture?.basis !== 'measured') return notes;
  const word = typeof facts.texture === 'string' ? facts.texture : facts.texture?.name;
  if (word !== undefined && word !== texture.name)
    notes.push({ code: 'soil.texture-word-differs', parameters: { word, name: texture.name } });
  const near = nearbyClasses(texture.parts);
  if (near.length > 0)
    notes.push({ code: 'soil.texture-near-line', parameters: { name: texture.name, other: near.join(', ') } });
  return notes;
}
