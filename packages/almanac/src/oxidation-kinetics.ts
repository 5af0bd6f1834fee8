import { type Row, rows } from './generated/oxidation-kinetics.ts';

export type OxidationKineticsRow = Row;
/** How fast sulfur turns to acid in soil, as published. */
export const oxidationKinetics: readonly OxidationKineticsRow[] = rows;
