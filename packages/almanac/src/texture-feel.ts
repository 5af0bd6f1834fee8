import { type Row, rows } from './generated/texture-feel.ts';

export type TextureFeelRow = Row;

/** Texture class by ribbon length and feel. */
export const textureFeel: readonly TextureFeelRow[] = rows;
