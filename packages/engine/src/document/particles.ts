import { addsUp } from '../evidence/texture-sum.ts';
import type { TextureParts } from '../soil/soil.ts';
import type { Report } from './fields.ts';
import { type Path, pathText } from './path.ts';
import { problem } from './report.ts';

/**
 * Sand, silt and clay that add up to the whole; the third is worked out when two are given.
 * A sum that rounding does not explain is a problem, never quietly scaled.
 */
export function particles(
  given: { readonly sand?: number | undefined; readonly silt?: number | undefined; readonly clay?: number | undefined },
  at: Path,
  report: Report,
): TextureParts | undefined {
  const { sand, silt, clay } = given;
  const count = [sand, silt, clay].filter((part) => part !== undefined).length;
  if (count === 0) return undefined;
  const where = { place: report.place, field: pathText([...at, 'sand + silt + clay']) };
  if (count === 1) {
    report.problems.push(problem('document.texture-part', where, printed(given)));
    return undefined;
  }
  const known = (sand ?? 0) + (silt ?? 0) + (clay ?? 0);
  const rest = count === 3 ? 0 : Math.max(0, 1 - known);
  const sum = known + rest;
  if (!addsUp(sum)) {
    report.problems.push(problem('document.texture-sum', where, printed(given), { sum: Math.round(sum * 1000) / 10 }));
    return undefined;
  }
  return { sand: (sand ?? rest) / sum, silt: (silt ?? rest) / sum, clay: (clay ?? rest) / sum };
}

const printed = (given: Readonly<Record<string, number | undefined>>): string =>
  Object.entries(given)
    .filter((entry) => entry[1] !== undefined)
    .map(([name, part]) => `${name} ${Math.round((part ?? 0) * 1000) / 10} %`)
    .join(', ');
