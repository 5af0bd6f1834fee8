import { MAX_STEP_PH, SMALLEST, SULFUR_STOPS } from './kernel-limits.ts';
import { createState, lookUp, type State } from './kernel-state.ts';
import type { ParameterSet } from './parameter-set.ts';
import { EQUIVALENT } from './parameters.ts';
import type { Scenario } from './scenario.ts';

/**
 * The model of a bed of one layer as `docs/model.md` writes it: one member and one outer step (a week) at a time, every
 * logarithm and exponential by `Math`. Read this one first. `kernel-single.ts` must give the same (a test holds them
 * together) and comes here for the members whose week must be broken up.
 *
 * @param ph receives `ph[step * count + member]`, steps + 1 rows
 * @returns how many logarithms and exponentials were evaluated
 */
export function runPlain(scenario: Scenario, set: ParameterSet, ph: Float32Array | Float64Array): number {
  const state = createState(scenario, set);
  const { steps } = scenario;
  const { count } = set;
  let evaluated = 0;
  for (let m = 0; m < count; m++) {
    for (let t = 0; t < steps; t++) {
      ph[t * count + m] = phOf(set, state, m);
      evaluated += week(scenario, set, state, t, m);
    }
    ph[steps * count + m] = phOf(set, state, m);
  }
  return evaluated + count;
}

/** pH of a member from its base content, `pm + w asinh(Q/(M beta0 w))`. */
function phOf(set: ParameterSet, state: State, m: number): number {
  const w = set.w[m] as number;
  const x = (state.q[m] as number) / ((state.buffer[m] as number) * w);
  return (set.pm[m] as number) + w * Math.log(x + Math.sqrt(x * x + 1));
}

/** Takes one member through one outer step, in as many inner ones as its pH needs; returns the logarithms and exponentials. */
export function week(scenario: Scenario, set: ParameterSet, state: State, t: number, m: number): number {
  const { limeDays, sulfurDays, fixed, given, taken, carbonateRate, gibbsite, charges, tables } = scenario;
  const { count, loss, left, clock, newLoss, newLeft } = state;
  const pm = set.pm[m] as number;
  const w = set.w[m] as number;
  const b = state.buffer[m] as number;
  const bicarbonate = state.bicarbonate[m] as number;
  const cap = state.cap[m] as number;
  const pHCal = state.pHCal[m] as number;
  const eta = set.eta[m] as number;
  const etaAcid = set.etaAcid[m] as number;
  const dissolving = (set.kLime[m] as number) * (state.gScale[m] as number);
  const oxidising = state.perSulfurDay[m] as number;
  const water = (set.drainage[m] as number) * (scenario.drainage[t] as number) * 1000 * EQUIVALENT;
  const steady =
    (fixed[t] as number) -
    (state.steadyAcid[m] as number) +
    eta * (given[t] as number) -
    etaAcid * (taken[t] as number);
  let q = state.q[m] as number;
  let store = state.store[m] as number;
  let evaluated = 0;
  let remaining = 1;
  let step = 1;
  while (remaining > 1e-9) {
    const x = q / (b * w);
    const root = Math.sqrt(x * x + 1);
    // asinh(x) = ln(x + √(x² + 1)); no garden's x is so far below zero that the sum would cancel.
    const ph = pm + w * Math.log(x + root);
    const h = Math.exp(-Math.LN10 * ph);
    evaluated += 2;
    const rate = steady - water * Math.min(bicarbonate / h, cap) + water * h * (1 + 3 * gibbsite * h * h);
    const short = (state.qCal[m] as number) - q;
    const draw = short < 0 || store > 0 ? short * carbonateRate : 0;
    let gain = 0;
    for (let c = 0; c < charges.count; c++) {
      const start = charges.start[c] as number;
      if (start > t) continue;
      const at = c * count + m;
      const present = start === t ? (charges.firstShare[c] as number) : 1;
      let further = present * (charges.speed[c] as number) * step;
      const isSulfur = charges.sulfur[c] === 1;
      if (isSulfur) {
        further *= (sulfurDays[t] as number) * oxidising;
        const before = clock[at] as number;
        const after = before + present * (sulfurDays[t] as number) * step;
        const wait = charges.waits[c] === 1 ? (set.lag[m] as number) : 0;
        if (before < wait) further = after <= wait ? 0 : (further * (after - wait)) / (after - before);
        if (ph < SULFUR_STOPS + 1) further *= Math.max(0, ph - SULFUR_STOPS);
      } else further *= (limeDays[t] as number) * dissolving * Math.max(0, pHCal - ph);
      const lost = (loss[at] as number) + further;
      const rest = lookUp(tables, charges.table[c] as number, charges.inverseEnd[c] as number, lost);
      newLoss[at] = lost;
      newLeft[at] = rest;
      const reacted = (charges.amount[c] as number) * ((left[at] as number) - rest);
      gain += isSulfur ? -etaAcid * reacted : eta * reacted;
    }
    const change = Math.abs((rate + draw) * step + gain);
    const most = MAX_STEP_PH * b * root;
    if (change > most && step > SMALLEST) {
      step = Math.max(SMALLEST, (step * 0.9 * most) / change);
      continue;
    }
    const drawn = Math.min(draw * step, store);
    store -= drawn;
    q += rate * step + gain + drawn;
    for (let c = 0; c < charges.count; c++) {
      const start = charges.start[c] as number;
      if (start > t) continue;
      const at = c * count + m;
      loss[at] = newLoss[at] as number;
      left[at] = newLeft[at] as number;
      const present = start === t ? (charges.firstShare[c] as number) : 1;
      if (charges.sulfur[c] === 1) clock[at] = (clock[at] as number) + present * (sulfurDays[t] as number) * step;
    }
    remaining -= step;
    step = Math.min(remaining, step * 1.5);
  }
  state.q[m] = q;
  state.store[m] = store;
  return evaluated;
}
