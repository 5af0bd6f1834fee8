import type { CubicMetre, Metre, SquareMetre } from '../units/si.ts';
import type { Report } from './fields.ts';
import { limits } from './limits.ts';
import { measure } from './measure.ts';
import { type Path, pathText } from './path.ts';
import { problem } from './report.ts';

export interface Extent {
  readonly area: SquareMetre;
  readonly volume?: CubicMetre;
  readonly assumed: boolean;
}

/** How big a place is, by the one way it was measured; 1 m² (or 10 L of mix in pots) when nobody said. */
export function extentOf(
  entry: {
    readonly size?: string | undefined;
    readonly area?: string | undefined;
    readonly pots?: { readonly count: number; readonly volume: string } | undefined;
  },
  container: boolean,
  depth: Metre,
  at: Path,
  report: Report,
): Extent | undefined {
  const ways = (['size', 'area', 'pots'] as const).filter((way) => entry[way] !== undefined);
  if (ways.length > 1 && !(ways.length === 2 && ways.includes('pots') && container)) {
    report.problems.push(
      problem('document.no-size', { place: report.place, field: pathText([...at, ways[1] ?? '']) }, ways.join(', '), {
        found: ways.join(' and '),
      }),
    );
    return undefined;
  }
  const volume =
    entry.pots === undefined
      ? undefined
      : measure(entry.pots.volume, 'volume', limits.volume, [...at, 'pots', 'volume'], report);
  if (entry.pots !== undefined && volume === undefined) return undefined;
  const total = volume === undefined ? undefined : volume * (entry.pots?.count ?? 1);
  const area =
    entry.size !== undefined
      ? measure(entry.size, 'area', limits.area, [...at, 'size'], report)
      : measure(entry.area, 'area', limits.area, [...at, 'area'], report);
  if (area === undefined && (entry.size ?? entry.area) !== undefined) return undefined;
  if (container) {
    const mix = total ?? (area === undefined ? 0.01 : area * depth);
    return { area: area ?? mix / depth, volume: mix, assumed: ways.length === 0 };
  }
  if (total !== undefined) return { area: area ?? total / depth, volume: total, assumed: false };
  return { area: area ?? 1, assumed: ways.length === 0 };
}
