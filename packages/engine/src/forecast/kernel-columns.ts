import { MAX_STEP_PH } from './kernel-limits.ts';
import { reachOf } from './kernel-series.ts';
import type { State } from './kernel-state.ts';
import type { ParameterSet } from './parameter-set.ts';

/**
 * Members worked on together: few enough to keep their columns in the processor's nearest memory, and no power of two,
 * which would put all columns in the same few places of it.
 */
export const BLOCK = 72;

// All columns of a block lie in one array, `block[COLUMN + i]`: JavaScript engines handle one array in a loop far better
// than twenty. Symbols are those of `docs/model.md`.
/** Base content Q, kg CaCO3/m². */
export const Q = 0 * BLOCK;
/** Carbonate store C. */
export const STORE = 1 * BLOCK;
export const PH = 2 * BLOCK;
/** x + √(x² + 1), whose logarithm is asinh(x). */
export const LEVEL = 3 * BLOCK;
/** H, and the bicarbonate of drainage KH K1 p/H before its cap, mol/L. */
export const ACIDITY = 4 * BLOCK;
export const FREE = 5 * BLOCK;
/** What materials give in this week, and the largest change of Q allowed. */
export const GAIN = 6 * BLOCK;
export const LIMIT = 7 * BLOCK;
/** The rest does not change. 1/(M beta0 w). */
export const PER_SCALE = 8 * BLOCK;
/** M beta0 × the largest change of pH. */
export const MOST = 9 * BLOCK;
/** How far the series carry. */
export const REACH = 10 * BLOCK;
export const W = 11 * BLOCK;
export const PM = 12 * BLOCK;
/** KH K1 p, and the highest alkalinity of drainage, mol/L. */
export const BICARBONATE = 13 * BLOCK;
export const CAP = 14 * BLOCK;
export const DRAINAGE = 15 * BLOCK;
export const STEADY_ACID = 16 * BLOCK;
export const PH_CAL = 17 * BLOCK;
export const Q_CAL = 18 * BLOCK;
/** k_d/(pH_cal − 5). */
export const DISSOLVING = 19 * BLOCK;
/** 2 K_S/rho_S. */
export const OXIDISING = 20 * BLOCK;
export const LAG = 21 * BLOCK;
export const ETA = 22 * BLOCK;
export const ETA_ACID = 23 * BLOCK;
const MEMBER_COLUMNS = 24 * BLOCK;

// Columns of a material, counted from `materialAt`. What they held before this week serves members taken back.
export const LOSS = 0 * BLOCK;
export const LEFT = 1 * BLOCK;
export const CLOCK = 2 * BLOCK;
export const LOSS_BEFORE = 3 * BLOCK;
export const LEFT_BEFORE = 4 * BLOCK;
export const CLOCK_BEFORE = 5 * BLOCK;

/** Place of the columns of material c. */
export function materialAt(c: number): number {
  return MEMBER_COLUMNS + c * 6 * BLOCK;
}

/** Copies members `from` and on into a block. */
export function fillBlock(block: Float64Array, set: ParameterSet, state: State, from: number, n: number): void {
  const copy = (column: number, values: Float64Array) => block.set(values.subarray(from, from + n), column);
  copy(W, set.w);
  copy(PM, set.pm);
  copy(BICARBONATE, state.bicarbonate);
  copy(CAP, state.cap);
  copy(DRAINAGE, set.drainage);
  copy(STEADY_ACID, state.steadyAcid);
  copy(PH_CAL, state.pHCal);
  copy(Q_CAL, state.qCal);
  copy(OXIDISING, state.perSulfurDay);
  copy(LAG, set.lag);
  copy(ETA, set.eta);
  copy(ETA_ACID, set.etaAcid);
  // No ratio to a level of 0 is within reach, so the first pH is worked out in full.
  block.fill(0, LEVEL, LEVEL + BLOCK);
  for (let i = 0; i < n; i++) {
    const m = from + i;
    const w = set.w[m] as number;
    const buffer = state.buffer[m] as number;
    block[PER_SCALE + i] = 1 / (buffer * w);
    block[MOST + i] = MAX_STEP_PH * buffer;
    block[REACH + i] = reachOf(w);
    block[DISSOLVING + i] = (set.kLime[m] as number) * (state.gScale[m] as number);
    takeFrom(block, state, i, m);
  }
}

/** Copies what changes of member m from the state. */
export function takeFrom(block: Float64Array, state: State, i: number, m: number): void {
  const { count, q, store, loss, left, clock } = state;
  block[Q + i] = q[m] as number;
  block[STORE + i] = store[m] as number;
  for (let own = m, at = materialAt(0) + i; own < loss.length; own += count, at += 6 * BLOCK) {
    block[at + LOSS] = loss[own] as number;
    block[at + LEFT] = left[own] as number;
    block[at + CLOCK] = clock[own] as number;
  }
}

/** Puts member m back into the state, as it stood before the materials of week t; those start at `start`. */
export function giveBack(block: Float64Array, state: State, i: number, m: number, t: number, start: Int32Array): void {
  const { count, q, store, loss, left, clock } = state;
  q[m] = block[Q + i] as number;
  store[m] = block[STORE + i] as number;
  for (let c = 0; c < start.length; c++) {
    if ((start[c] as number) > t) continue;
    const at = materialAt(c) + i;
    const own = c * count + m;
    loss[own] = block[at + LOSS_BEFORE] as number;
    left[own] = block[at + LEFT_BEFORE] as number;
    clock[own] = block[at + CLOCK_BEFORE] as number;
  }
}
