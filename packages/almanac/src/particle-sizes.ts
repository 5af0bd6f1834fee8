import { type Row, rows } from './generated/particle-sizes.ts';

export type ParticleSizesRow = Row;

/** Limits of sand, silt and clay in each system, mm. */
export const particleSizes: readonly ParticleSizesRow[] = rows;
