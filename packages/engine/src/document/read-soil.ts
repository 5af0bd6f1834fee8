import type { Place } from '../plan/place.ts';
import type { Texture } from '../soil/soil.ts';
import { textureOf } from '../soil/texture.ts';
import type { Report } from './fields.ts';
import type { Path } from './issue.ts';
import { limits } from './limits.ts';
import { measure } from './measure.ts';
import { particles } from './particles.ts';
import type { SoilEntry } from './schema.ts';

type Ground = Pick<Place, 'texture' | 'organicMatter' | 'bulkDensity' | 'coarseFragments'>;

/** What is known of the ground of a place, in SI: measured sizes before a jar, a jar before a named class. */
export function readGround(soil: SoilEntry | undefined, at: Path, report: Report): Ground {
  if (soil === undefined) return {};
  const share = (name: 'sand' | 'silt' | 'clay' | 'organicMatter' | 'stones') =>
    measure(soil[name], 'massFraction', limits.share, [...at, name], report);
  const texture = readTexture(soil, { sand: share('sand'), silt: share('silt'), clay: share('clay') }, at, report);
  const organicMatter = share('organicMatter');
  const bulkDensity = measure(soil.bulkDensity, 'massPerVolume', limits.density, [...at, 'bulkDensity'], report);
  const coarseFragments = share('stones');
  return {
    ...(texture === undefined ? {} : { texture }),
    ...(organicMatter === undefined ? {} : { organicMatter }),
    ...(bulkDensity === undefined ? {} : { bulkDensity }),
    ...(coarseFragments === undefined ? {} : { coarseFragments }),
  };
}

function readTexture(
  soil: SoilEntry,
  measured: { sand: number | undefined; silt: number | undefined; clay: number | undefined },
  at: Path,
  report: Report,
): Texture | undefined {
  const parts = particles(measured, at, report);
  if (parts !== undefined) return textureOf({ parts, basis: 'measured' });
  if (soil.jar !== undefined) {
    const layer = (name: 'sand' | 'silt' | 'clay') =>
      measure(soil.jar?.[name], 'length', limits.depth, [...at, 'jar', name], report);
    const [sand, silt, clay] = [layer('sand'), layer('silt'), layer('clay')];
    if (sand === undefined || silt === undefined || clay === undefined) return undefined;
    const whole = sand + silt + clay;
    return textureOf({ parts: { sand: sand / whole, silt: silt / whole, clay: clay / whole }, basis: 'jar' });
  }
  return soil.texture === undefined ? undefined : textureOf({ name: soil.texture });
}
