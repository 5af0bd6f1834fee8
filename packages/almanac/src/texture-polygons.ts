import { type Row, rows } from './generated/texture-polygons.ts';

export type TexturePolygonsRow = Row;

/** USDA classes as rings of corner numbers. */
export const texturePolygons: readonly TexturePolygonsRow[] = rows;
