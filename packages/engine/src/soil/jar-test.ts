import { fail, ok, type Problem, type Result } from '../derivation/problem.ts';
import type { Metre } from '../units/si.ts';
import type { Texture } from './soil.ts';
import { textureClass } from './texture-class.ts';

/** Heights of the settled layer in a jar, read from the outside: after 1 minute, after 6 hours, and when all is down. */
export interface JarHeights {
  /** Sand, at 1 minute. */
  readonly afterMinute: Metre;
  /** Sand and silt, at 6 hours. The common "2 hours" counts fine silt as clay. */
  readonly afterSixHours: Metre;
  /** All of it, at 24 hours or when the water is clear. */
  readonly atEnd: Metre;
}

/**
 * Texture from a jar of soil, water and a spoon of dispersant (MSU_JAR). Good to one class either way: a dose from it must
 * be made more careful, never less.
 *
 * @returns the texture with basis `jar`, or what is wrong with the heights
 */
export function textureFromJar(heights: JarHeights): Result<Texture> {
  const { afterMinute, afterSixHours, atEnd } = heights;
  const problem = (field: keyof JarHeights, message: string, fix: string): Problem => ({
    code: 'soil.jar-heights',
    field,
    value: heights[field],
    message,
    fix,
  });
  if (!(atEnd > 0))
    return fail(problem('atEnd', 'The settled layer has no height.', 'Measure the whole layer at the end.'));
  if (!(afterMinute >= 0))
    return fail(problem('afterMinute', 'The height after 1 minute is missing.', 'Measure the layer after 1 minute.'));
  if (!(afterSixHours >= afterMinute))
    return fail(
      problem(
        'afterSixHours',
        'The layer after 6 hours is lower than after 1 minute.',
        'Measure from the bottom of the jar.',
      ),
    );
  if (!(atEnd >= afterSixHours))
    return fail(
      problem('atEnd', 'The layer at the end is lower than after 6 hours.', 'Measure from the bottom of the jar.'),
    );
  const parts = {
    sand: afterMinute / atEnd,
    silt: (afterSixHours - afterMinute) / atEnd,
    clay: (atEnd - afterSixHours) / atEnd,
  };
  return ok({ name: textureClass(parts), parts, basis: 'jar' });
}
