import { diseases } from '@sorrel/almanac/diseases';
import { findDisease } from '../nutrients/diseases.ts';
import { nearest } from '../units/nearest.ts';
import type { Report } from './fields.ts';
import { type Path, pathText } from './path.ts';
import { problem } from './report.ts';

/** Diseases of a place by their keys; a name nobody knows is reported with the nearest and not used. */
export function readDiseases(names: readonly string[], at: Path, report: Report): readonly string[] {
  return names.flatMap((name, index) => {
    const found = findDisease(name);
    if (found !== undefined) return [found.key];
    const known = diseases.map((row) => row.key);
    const words = { nearest: nearest(name, known) ?? known[0] ?? '', known: known.join(', ') };
    const where = { place: report.place, field: pathText([...at, index]) };
    report.problems.push(problem('document.not-a-choice', where, name, words));
    return [];
  });
}
