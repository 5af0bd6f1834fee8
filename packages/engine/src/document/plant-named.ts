import { findHalfKnownPlant, type HalfKnownPlantRow, nearestHalfKnownPlants } from '@sorrel/almanac/half-known-plants';
import { findPlant, nearestPlants } from '@sorrel/almanac/plants';
import type { Problem } from '../derivation/problem.ts';
import type { PlantRange } from '../plan/place.ts';
import { plantRangeOf, potRangeOf } from '../plan/plant-range.ts';
import type { Medium } from '../soil/soil.ts';
import type { Report } from './fields.ts';
import { type Path, pathText } from './path.ts';
import { problem } from './report.ts';

/**
 * The range of a plant of the almanac by any of its names; an unknown one is reported with the nearest. A plant with a
 * range for pots alone is taken in a potting mix and reported anywhere else.
 */
export function plantNamed(name: string, at: Path, report: Report, medium?: Medium): PlantRange | undefined {
  const row = findPlant(name);
  if (row !== undefined) return plantRangeOf(row);
  const half = findHalfKnownPlant(name);
  if (half !== undefined) {
    const potted = medium === 'soilless' ? potRangeOf(half) : undefined;
    if (potted === undefined) report.problems.push(halfKnown(half, { place: report.place, field: pathText(at) }, name));
    return potted;
  }
  const near = [...nearestPlants(name), ...nearestHalfKnownPlants(name, 1)].map((each) => `"${each.name}"`);
  const where = { place: report.place, field: pathText(at) };
  report.problems.push(
    near.length === 0
      ? problem('document.unknown-plant', where, name, {}, 'document.unknown-plant-far.fix')
      : problem('document.unknown-plant', where, name, { nearest: near.slice(0, 3).join(' or ') }),
  );
  return undefined;
}

/** Why a half-known plant cannot be planned for here. */
function halfKnown(row: HalfKnownPlantRow, where: Parameters<typeof problem>[1], typed: string): Problem {
  const plant = row.name;
  if (row.containerLow !== undefined && row.containerHigh !== undefined)
    return problem('document.plant-only-in-pots', where, typed, {
      plant,
      low: row.containerLow,
      high: row.containerHigh,
    });
  return row.foundLow === undefined
    ? problem(
        'document.plant-only-stands',
        where,
        typed,
        { plant, high: row.foundHigh ?? '' },
        'document.plant-only-found.fix',
      )
    : problem('document.plant-only-found', where, typed, { plant, low: row.foundLow, high: row.foundHigh ?? '' });
}
