import { findPlant, nearestPlants } from '@sorrel/almanac/plants';
import type { PlantRange } from '../plan/place.ts';
import { plantRangeOf } from '../plan/plant-range.ts';
import type { Report } from './fields.ts';
import { type Path, pathText } from './path.ts';
import { problem } from './report.ts';

/** The range of a plant of the almanac by any of its names; an unknown one is reported with the nearest. */
export function plantNamed(name: string, at: Path, report: Report): PlantRange | undefined {
  const row = findPlant(name);
  if (row !== undefined) return plantRangeOf(row);
  const near = nearestPlants(name).map((each) => `"${each.name}"`);
  const where = { place: report.place, field: pathText(at) };
  report.problems.push(
    near.length === 0
      ? problem('document.unknown-plant', where, name, {}, 'document.unknown-plant-far.fix')
      : problem('document.unknown-plant', where, name, { nearest: near.slice(0, 3).join(' or ') }),
  );
  return undefined;
}
