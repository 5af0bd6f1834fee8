import { texturePolygons } from '@sorrel/almanac/texture-polygons';
import { textureRules } from '@sorrel/almanac/texture-rules';
import { textureVertices } from '@sorrel/almanac/texture-vertices';
import type { TextureClass } from '../evidence/soil-test.ts';
import type { TextureParts } from './soil.ts';

interface Point {
  readonly clay: number;
  readonly silt: number;
}

const vertexOf = new Map(textureVertices.map((row) => [row.vertex, row]));
const nameOf = new Map(textureRules.map((row) => [row.code, row.class as TextureClass]));

const polygons = texturePolygons.map((row) => ({
  name: nameOf.get(row.code) ?? ('clay' as TextureClass),
  ring: row.ring.map((number): Point => {
    const vertex = vertexOf.get(Number(number));
    if (vertex === undefined) throw new RangeError(`no corner ${number} in texture-vertices`);
    return vertex;
  }),
}));

const NEAR = 1e-9;

const onEdge = (point: Point, a: Point, b: Point): boolean => {
  const cross = (b.clay - a.clay) * (point.silt - a.silt) - (b.silt - a.silt) * (point.clay - a.clay);
  if (Math.abs(cross) > NEAR) return false;
  return (
    point.clay >= Math.min(a.clay, b.clay) - NEAR &&
    point.clay <= Math.max(a.clay, b.clay) + NEAR &&
    point.silt >= Math.min(a.silt, b.silt) - NEAR &&
    point.silt <= Math.max(a.silt, b.silt) + NEAR
  );
};

function within(point: Point, ring: readonly Point[]): boolean {
  let inside = false;
  for (const [index, a] of ring.entries()) {
    const b = ring[(index + 1) % ring.length] as Point;
    if (onEdge(point, a, b)) return true;
    if (
      a.silt > point.silt !== b.silt > point.silt &&
      point.clay < ((b.clay - a.clay) * (point.silt - a.silt)) / (b.silt - a.silt) + a.clay
    )
      inside = !inside;
  }
  return inside;
}

/**
 * Texture class by a widely used table of corners (MOEYS), which draws lines at 7.5, 12.5, 27.5 and 52.5 where the rules
 * say 7, 12, 27 and 52. For comparison only: it differs from the rules over 0.8 % of the triangle.
 * A soil on a shared edge belongs to the first polygon of the table.
 */
export function polygonClass(parts: TextureParts): TextureClass | undefined {
  const sum = parts.sand + parts.silt + parts.clay;
  const point = { clay: (100 * parts.clay) / sum, silt: (100 * parts.silt) / sum };
  return polygons.find(({ ring }) => within(point, ring))?.name;
}
