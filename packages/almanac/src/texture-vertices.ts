import { type Row, rows } from './generated/texture-vertices.ts';

export type TextureVerticesRow = Row;

/** Corners of the drawn USDA triangle, %. */
export const textureVertices: readonly TextureVerticesRow[] = rows;
