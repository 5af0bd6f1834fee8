import type { PlantRange } from '../plan/place.ts';
import type { Medium } from '../soil/soil.ts';
import { type Report, readFields } from './fields.ts';
import { type Path, pathText } from './path.ts';
import { plantNamed } from './plant-named.ts';
import { problem } from './report.ts';
import { ownRange } from './schema.ts';

/**
 * The range of a plant named in the almanac, or of one whose pH range the gardener gives.
 *
 * @param medium what it is to grow in; without it a plant with a range for pots alone is not taken
 */
export function readPlant(typed: unknown, at: Path, report: Report, medium?: Medium): PlantRange | undefined {
  if (typeof typed === 'string' && typed.trim() !== '') return plantNamed(typed.trim(), at, report, medium);
  const { fields, bad } = readFields(ownRange.shape, typed, at, report);
  const { plant, low, high, aim } = fields;
  if (bad.size > 0 || plant === undefined || low === undefined || high === undefined) return undefined;
  if (low >= high || (aim !== undefined && (aim < low || aim > high))) {
    const where = { place: report.place, field: pathText(at) };
    report.problems.push(problem('document.target-order', where, `${low} to ${high}`, { low, high }));
    return undefined;
  }
  const middle = aim ?? (low + high) / 2;
  return {
    key: `own ${plant.toLowerCase()}`,
    name: plant,
    low,
    high,
    aim: middle,
    reaction: high <= 6 ? 'acid-loving' : low >= 7 ? 'lime-loving' : 'neutral',
    sources: ['SORREL'],
    basis: 'judgement',
  };
}
