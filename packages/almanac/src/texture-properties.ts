import { type Row, rows } from './generated/texture-properties.ts';

export type TexturePropertiesRow = Row;

/** Ranges of soil properties by texture class, in the published units. */
export const textureProperties: readonly TexturePropertiesRow[] = rows;
