import {
  ACIDITY,
  BICARBONATE,
  BLOCK,
  CAP,
  CLOCK,
  CLOCK_BEFORE,
  DISSOLVING,
  DRAINAGE,
  ETA,
  ETA_ACID,
  FREE,
  fillBlock,
  GAIN,
  giveBack,
  LAG,
  LEFT,
  LEFT_BEFORE,
  LEVEL,
  LIMIT,
  LOSS,
  LOSS_BEFORE,
  MOST,
  materialAt,
  OXIDISING,
  PER_SCALE,
  PH,
  PH_CAL,
  PM,
  Q,
  Q_CAL,
  REACH,
  STEADY_ACID,
  STORE,
  takeFrom,
  W,
} from './kernel-columns.ts';
import { SULFUR_STOPS } from './kernel-limits.ts';
import { week } from './kernel-plain.ts';
import { evenPart, logOfRatio, oddPart } from './kernel-series.ts';
import { createState, lookUp } from './kernel-state.ts';
import type { ParameterSet } from './parameter-set.ts';
import { EQUIVALENT } from './parameters.ts';
import type { Scenario } from './scenario.ts';

/**
 * The quick kernel for the common bed of one layer, when only its pH is asked for. Same equations and same inner steps as
 * `kernel-plain.ts`, which explains them; a test holds the two together. Each week is a few passes over a block of
 * members, all with a whole step; the few whose pH would move too far are taken back and given to `week`.
 *
 * @param ph receives `ph[step * count + member]`, steps + 1 rows
 * @returns how many logarithms and exponentials the model asked for: those of `kernel-plain.ts`, whether they came from
 *   `Math` or from a series
 */
export function runSingle(scenario: Scenario, set: ParameterSet, ph: Float32Array | Float64Array): number {
  const state = createState(scenario, set);
  const { count } = set;
  const { steps, charges } = scenario;
  const block = new Float64Array(materialAt(charges.count));
  const late = new Int32Array(BLOCK);
  let evaluated = count;
  for (let from = 0; from < count; from += BLOCK) {
    const n = Math.min(BLOCK, count - from);
    const phOfBlock = block.subarray(PH, PH + n);
    fillBlock(block, set, state, from, n);
    for (let t = 0; t < steps; t++) {
      phPass(block, n);
      ph.set(phOfBlock, t * count + from);
      fastPass(scenario, block, t, n);
      for (let c = 0; c < charges.count; c++)
        if ((charges.start[c] as number) <= t)
          if (charges.sulfur[c] === 1) oxidisePass(scenario, block, t, c, n);
          else dissolvePass(scenario, block, t, c, n);
      const lateOnes = takePass(scenario, block, t, n, late);
      evaluated += 2 * (n - lateOnes);
      for (let k = 0; k < lateOnes; k++) {
        const i = late[k] as number;
        giveBack(block, state, i, from + i, t, charges.start);
        evaluated += week(scenario, set, state, t, from + i);
        takeFrom(block, state, i, from + i);
      }
    }
    phPass(block, n);
    ph.set(phOfBlock, steps * count + from);
  }
  return evaluated;
}

/** pH, H and bicarbonate from Q, by series from the week before or, after a large change, in full. */
function phPass(s: Float64Array, n: number): void {
  for (let i = 0; i < n; i++) {
    const x = (s[Q + i] as number) * (s[PER_SCALE + i] as number);
    const root = Math.sqrt(x * x + 1);
    const now = x + root;
    const before = s[LEVEL + i] as number;
    const ratio = (now - before) / (now + before);
    const reach = s[REACH + i] as number;
    s[LEVEL + i] = now;
    s[LIMIT + i] = (s[MOST + i] as number) * root;
    if (ratio > reach || ratio < -reach) {
      const ph = (s[PM + i] as number) + (s[W + i] as number) * Math.log(now);
      const h = Math.exp(-Math.LN10 * ph);
      s[PH + i] = ph;
      s[ACIDITY + i] = h;
      s[FREE + i] = (s[BICARBONATE + i] as number) / h;
    } else {
      const change = (s[W + i] as number) * logOfRatio(ratio);
      const u = Math.LN10 * change;
      const even = evenPart(u * u);
      const odd = oddPart(u, u * u);
      s[PH + i] = (s[PH + i] as number) + change;
      s[ACIDITY + i] = (s[ACIDITY + i] as number) * (even - odd);
      s[FREE + i] = (s[FREE + i] as number) * (even + odd);
    }
  }
}

/** What fast materials give. */
function fastPass(scenario: Scenario, s: Float64Array, t: number, n: number): void {
  const given = scenario.given[t] as number;
  const taken = scenario.taken[t] as number;
  if (given === 0 && taken === 0) s.fill(0, GAIN, GAIN + n);
  else for (let i = 0; i < n; i++) s[GAIN + i] = given * (s[ETA + i] as number) - taken * (s[ETA_ACID + i] as number);
}

/** What a lime gives. */
function dissolvePass(scenario: Scenario, s: Float64Array, t: number, c: number, n: number): void {
  const { charges, tables } = scenario;
  const own = materialAt(c);
  const amount = charges.amount[c] as number;
  const table = charges.table[c] as number;
  const inverseEnd = charges.inverseEnd[c] as number;
  const present = t === charges.start[c] ? (charges.firstShare[c] as number) : 1;
  const days = present * (charges.speed[c] as number) * (scenario.limeDays[t] as number);
  for (let i = 0; i < n; i++) {
    const at = own + i;
    const short = (s[PH_CAL + i] as number) - (s[PH + i] as number);
    const loss = s[at + LOSS] as number;
    const left = s[at + LEFT] as number;
    const lost = loss + days * (s[DISSOLVING + i] as number) * (short > 0 ? short : 0);
    const rest = lookUp(tables, table, inverseEnd, lost);
    s[at + LOSS_BEFORE] = loss;
    s[at + LEFT_BEFORE] = left;
    s[at + LOSS] = lost;
    s[at + LEFT] = rest;
    s[GAIN + i] = (s[GAIN + i] as number) + amount * (s[ETA + i] as number) * (left - rest);
  }
}

/** What a sulfur takes. */
function oxidisePass(scenario: Scenario, s: Float64Array, t: number, c: number, n: number): void {
  const { charges, tables } = scenario;
  const own = materialAt(c);
  const amount = charges.amount[c] as number;
  const speed = charges.speed[c] as number;
  const table = charges.table[c] as number;
  const inverseEnd = charges.inverseEnd[c] as number;
  const waits = charges.waits[c] === 1;
  const present = t === charges.start[c] ? (charges.firstShare[c] as number) : 1;
  const days = present * (scenario.sulfurDays[t] as number);
  for (let i = 0; i < n; i++) {
    const at = own + i;
    const ph = s[PH + i] as number;
    const before = s[at + CLOCK] as number;
    const after = before + days;
    const wait = waits ? (s[LAG + i] as number) : 0;
    let further = days * speed * (s[OXIDISING + i] as number);
    if (before < wait) further = after <= wait ? 0 : (further * (after - wait)) / (after - before);
    if (ph < SULFUR_STOPS + 1) further *= Math.max(0, ph - SULFUR_STOPS);
    const loss = s[at + LOSS] as number;
    const left = s[at + LEFT] as number;
    const rest = lookUp(tables, table, inverseEnd, loss + further);
    s[at + CLOCK_BEFORE] = before;
    s[at + LOSS_BEFORE] = loss;
    s[at + LEFT_BEFORE] = left;
    s[at + CLOCK] = after;
    s[at + LOSS] = loss + further;
    s[at + LEFT] = rest;
    s[GAIN + i] = (s[GAIN + i] as number) - amount * (s[ETA_ACID + i] as number) * (left - rest);
  }
}

/**
 * Drift, leaching and carbonate; takes the week where pH moves little enough, lists the other members in `late` and
 * returns how many they are.
 */
function takePass(scenario: Scenario, s: Float64Array, t: number, n: number, late: Int32Array): number {
  const { carbonateRate } = scenario;
  const water = (scenario.drainage[t] as number) * 1000 * EQUIVALENT;
  const fixed = scenario.fixed[t] as number;
  const gibbsite3 = 3 * scenario.gibbsite;
  let lateOnes = 0;
  for (let i = 0; i < n; i++) {
    const h = s[ACIDITY + i] as number;
    const free = s[FREE + i] as number;
    const cap = s[CAP + i] as number;
    const leached = (free < cap ? free : cap) - h * (1 + gibbsite3 * h * h);
    const drift = fixed - (s[STEADY_ACID + i] as number) - water * (s[DRAINAGE + i] as number) * leached;
    const change = drift + (s[GAIN + i] as number);
    const q = s[Q + i] as number;
    const store = s[STORE + i] as number;
    const short = (s[Q_CAL + i] as number) - q;
    const draw = short < 0 || store > 0 ? short * carbonateRate : 0;
    const limit = s[LIMIT + i] as number;
    if (change + draw > limit || change + draw < -limit) late[lateOnes++] = i;
    else {
      const drawn = draw < store ? draw : store;
      s[STORE + i] = store - drawn;
      s[Q + i] = q + change + drawn;
    }
  }
  return lateOnes;
}
