import type { TextureClass } from '../evidence/soil-test.ts';
import type { TextureParts } from './soil.ts';

/** Percent, free of the dust that binary fractions leave: 0.29 is 29, not 28.999… */
const percent = (part: number, sum: number): number => Math.round((part / sum) * 1e8) / 1e6;

/**
 * USDA texture class by the half-open limits of the Soil Survey Manual, tried in this order (SSSA_GLOSS read for sand, loamy
 * sand, loam, clay loam and clay; the others SSM2017, from memory, and the tiling bears them out). The same limits
 * stand in the almanac table `texture-rules`. The only tie is on silt + 1.5 clay = 15, where sand comes first.
 *
 * @param parts sand 0.05–2 mm, silt, clay under 0.002 mm; any positive sum, scaled to 1 here
 * @throws RangeError for a part below 0 or a sum of 0: check the entry first
 */
export function textureClass(parts: TextureParts): TextureClass {
  const sum = parts.sand + parts.silt + parts.clay;
  if (!(parts.sand >= 0 && parts.silt >= 0 && parts.clay >= 0 && sum > 0))
    throw new RangeError('sand, silt and clay must be 0 or more and not all 0');
  const sand = percent(parts.sand, sum);
  const silt = percent(parts.silt, sum);
  const clay = percent(parts.clay, sum);
  if (sand >= 85 && silt + 1.5 * clay <= 15) return 'sand';
  if (sand >= 70 && sand < 91 && silt + 1.5 * clay >= 15 && silt + 2 * clay < 30) return 'loamy sand';
  if (silt + 2 * clay >= 30 && ((clay >= 7 && clay < 20 && sand > 52) || (clay < 7 && silt < 50 && sand > 43)))
    return 'sandy loam';
  if (clay >= 7 && clay < 27 && silt >= 28 && silt < 50 && sand <= 52) return 'loam';
  if ((silt >= 50 && clay >= 12 && clay < 27) || (silt >= 50 && silt < 80 && clay < 12)) return 'silt loam';
  if (silt >= 80 && clay < 12) return 'silt';
  if (clay >= 20 && clay < 35 && silt < 28 && sand > 45) return 'sandy clay loam';
  if (clay >= 27 && clay < 40 && sand > 20 && sand <= 45) return 'clay loam';
  if (clay >= 27 && clay < 40 && sand <= 20) return 'silty clay loam';
  if (clay >= 35 && sand > 45) return 'sandy clay';
  if (clay >= 40 && silt >= 40) return 'silty clay';
  // What is left is clay of 40 % or more with sand to 45 and silt under 40; the grid test shows that nothing else is.
  return 'clay';
}

const STEP = 0.01;

/**
 * Other classes within 1 % of a soil: near a line both names are shown. One part grows by 1 %, another shrinks.
 *
 * @returns neighbouring classes without the soil's own, nearest first is not implied
 */
export function nearbyClasses(parts: TextureParts): TextureClass[] {
  const sum = parts.sand + parts.silt + parts.clay;
  const own = textureClass(parts);
  const found = new Set<TextureClass>();
  const at = [parts.sand / sum, parts.silt / sum, parts.clay / sum] as const;
  for (const up of [0, 1, 2] as const)
    for (const down of [0, 1, 2] as const) {
      if (up === down || at[down] < STEP) continue;
      const moved = [...at] as [number, number, number];
      moved[up] += STEP;
      moved[down] -= STEP;
      const name = textureClass({ sand: moved[0], silt: moved[1], clay: moved[2] });
      if (name !== own) found.add(name);
    }
  return [...found];
}
