import { type Row, rows } from './generated/texture-uk.ts';

export type TextureUkRow = Row;

/** UK texture classes as tests in %, tried in this order; sand from 0.06 mm. */
export const textureUk: readonly TextureUkRow[] = rows;
