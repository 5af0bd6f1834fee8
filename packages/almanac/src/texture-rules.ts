import { type Row, rows } from './generated/texture-rules.ts';

export type TextureRulesRow = Row;

/** USDA texture classes as half-open tests in %, tried in this order. */
export const textureRules: readonly TextureRulesRow[] = rows;
