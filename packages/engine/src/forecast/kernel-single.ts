import { MAX_STEP_PH, SMALLEST, SULFUR_STOPS } from './kernel-limits.ts';
import { createState, lookUp, type State } from './kernel-state.ts';
import type { ParameterSet } from './parameter-set.ts';
import { EQUIVALENT } from './parameters.ts';
import type { Scenario } from './scenario.ts';

/**
 * The kernel for the common bed of one layer, when only its pH is asked for: the same equations and the same inner steps
 * as `kernel.ts` (a test holds the two together), but one member at a time through all steps, its state in plain
 * variables, which is nearly twice as fast.
 *
 * @param ph receives `ph[step * count + member]`, steps + 1 rows
 * @returns how many logarithms and exponentials were evaluated
 */
export function runSingle(scenario: Scenario, set: ParameterSet, ph: Float32Array | Float64Array): number {
  const state = createState(scenario, set);
  let evaluated = 0;
  const drainage = scenario.drainage.map((depth) => depth * 1000 * EQUIVALENT);
  for (let m = 0; m < set.count; m++) evaluated += runMember(scenario, set, state, drainage, m, ph);
  return evaluated;
}

function runMember(
  scenario: Scenario,
  set: ParameterSet,
  state: State,
  drainageOf: Float64Array,
  m: number,
  out: Float32Array | Float64Array,
): number {
  const { steps, limeDays, sulfurDays, fixed, given, taken, carbonateRate, charges, tables } = scenario;
  const { count, loss, left, clock, newLoss, newLeft } = state;
  const { start: starts, firstShare, speed, sulfur, waits, table, inverseEnd, amount } = charges;
  const materials = charges.count;
  const pm = set.pm[m] as number;
  const w = set.w[m] as number;
  const b = state.buffer[m] as number;
  const perScale = 1 / (b * w);
  const drain = set.drainage[m] as number;
  const bicarbonate = state.bicarbonate[m] as number;
  const cap = state.cap[m] as number;
  const qCal = state.qCal[m] as number;
  const pHCal = state.pHCal[m] as number;
  const steadyAcid = state.steadyAcid[m] as number;
  const eta = set.eta[m] as number;
  const etaAcid = set.etaAcid[m] as number;
  const dissolving = (set.kLime[m] as number) * (state.gScale[m] as number);
  const oxidising = state.perSulfurDay[m] as number;
  const lag = set.lag[m] as number;
  const gibbsite3 = 3 * scenario.gibbsite;
  let q = state.q[m] as number;
  let store = state.store[m] as number;
  let evaluated = 0;
  for (let t = 0; t < steps; t++) {
    const water = drain * (drainageOf[t] as number);
    const steady = (fixed[t] as number) - steadyAcid + eta * (given[t] as number) - etaAcid * (taken[t] as number);
    let remaining = 1;
    let step = 1;
    let first = true;
    while (remaining > 0) {
      const x = q * perScale;
      const root = Math.sqrt(x * x + 1);
      const ph = pm + w * Math.log(x + root);
      const h = Math.exp(-Math.LN10 * ph);
      evaluated += 2;
      if (first) out[t * count + m] = ph;
      first = false;
      const rate =
        steady - water * (bicarbonate < cap * h ? bicarbonate / h : cap) + water * h * (1 + gibbsite3 * h * h);
      const short = qCal - q;
      const draw = short < 0 || store > 0 ? short * carbonateRate : 0;
      let gain = 0;
      for (let c = 0; c < materials; c++) {
        const start = starts[c] as number;
        if (start > t) continue;
        const at = c * count + m;
        const present = start === t ? (firstShare[c] as number) : 1;
        let further = present * (speed[c] as number) * step;
        const isSulfur = sulfur[c] === 1;
        if (isSulfur) {
          further *= (sulfurDays[t] as number) * oxidising;
          const before = clock[at] as number;
          const after = before + present * (sulfurDays[t] as number) * step;
          const wait = waits[c] === 1 ? lag : 0;
          if (before < wait) further = after <= wait ? 0 : (further * (after - wait)) / (after - before);
          if (ph < SULFUR_STOPS + 1) further *= Math.max(0, ph - SULFUR_STOPS);
        } else further *= (limeDays[t] as number) * dissolving * Math.max(0, pHCal - ph);
        const lost = (loss[at] as number) + further;
        const rest = lookUp(tables, table[c] as number, inverseEnd[c] as number, lost);
        newLoss[at] = lost;
        newLeft[at] = rest;
        const reacted = (amount[c] as number) * ((left[at] as number) - rest);
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
      for (let c = 0; c < materials; c++) {
        const start = starts[c] as number;
        if (start > t) continue;
        const at = c * count + m;
        loss[at] = newLoss[at] as number;
        left[at] = newLeft[at] as number;
        if (sulfur[c] === 1)
          clock[at] =
            (clock[at] as number) + (sulfurDays[t] as number) * (start === t ? (firstShare[c] as number) : 1) * step;
      }
      remaining -= step;
      if (remaining <= 1e-9) break;
      step = Math.min(remaining, step * 1.5);
    }
  }
  const x = q * perScale;
  out[steps * count + m] = pm + w * Math.log(x + Math.sqrt(x * x + 1));
  return evaluated + 1;
}
