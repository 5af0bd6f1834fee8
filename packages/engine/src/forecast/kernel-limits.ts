/** Largest change of pH within one inner step. */
export const MAX_STEP_PH = 0.05;
/** Smallest inner step, as a share of the outer one: a bound on the work, met only by impossible doses. */
export const SMALLEST = 1 / 256;
/** Oxidisers of sulfur slow down below pH 3 and stop at pH 2 (TEXT, from memory). */
export const SULFUR_STOPS = 2;
