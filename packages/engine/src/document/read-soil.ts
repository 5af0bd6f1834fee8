import type { Problem } from '../derivation/problem.ts';
import type { Place } from '../plan/place.ts';
import { textureFromJar } from '../soil/jar-test.ts';
import type { Texture } from '../soil/soil.ts';
import { textureOf } from '../soil/texture-of.ts';
import type { Report } from './fields.ts';
import { limits } from './limits.ts';
import { measure } from './measure.ts';
import { particles } from './particles.ts';
import { type Path, pathText } from './path.ts';
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
  if (parts !== undefined) return textureOf(parts);
  if (soil.jar === undefined) return textureOf({ texture: soil.texture });
  const jar = soil.jar;
  const height = (name: keyof typeof jar) => measure(jar[name], 'length', limits.jar, [...at, 'jar', name], report);
  const [afterMinute, afterSixHours, atEnd] = [height('afterMinute'), height('afterSixHours'), height('atEnd')];
  if (afterMinute === undefined || afterSixHours === undefined || atEnd === undefined) return undefined;
  const texture = textureFromJar({ afterMinute, afterSixHours, atEnd });
  if (texture.ok) return texture.value;
  for (const each of texture.problems) {
    const moved: Problem = { ...each, field: pathText([...at, 'jar', each.field]) };
    report.problems.push(report.place === undefined ? moved : { ...moved, place: report.place });
  }
  return undefined;
}
