/**
 * The inner loop of the forecast: all members of an ensemble, step by step, in typed arrays and without allocation.
 * Symbols are those of `docs/model.md`; amounts are kg CaCO3 equivalent per m².
 *
 * One outer step (a week) is three passes over the members:
 *   1. `phPass`, `ratePass`  pH from Q, H from pH; then the rates of drift, leaching and carbonate
 *   2. `materialPass`        what each material gives, from one lost diameter a member (see `loss-table.ts`)
 *   3. `checkPass`, `take…`   takes the step, or shortens it for members whose pH would move more than 0.05 and leaves
 *                            them in the list of active members for another round
 * What members share (temperature, moisture, water, fast materials) is worked out once a step in `Scenario`. A layer
 * costs one logarithm and one exponential a member and round, whatever the number of materials and size classes.
 * `kernel-plain.ts` is the same for one layer, to read; `kernel-single.ts` the same again, for speed.
 */
import { MAX_STEP_PH, SMALLEST, SULFUR_STOPS } from './kernel-limits.ts';
import { runSingle } from './kernel-single.ts';
import { createState, lookUp, type State } from './kernel-state.ts';
import { book } from './ledger.ts';
import { type ParameterSet, part } from './parameter-set.ts';
import { EQUIVALENT } from './parameters.ts';
import type { Scenario } from './scenario.ts';

export interface KernelOutput {
  /** pH of the reported layers, weighted by mass: `ph[step * count + member]`, steps + 1 rows. */
  readonly ph: Float32Array | Float64Array;
  /** The following are for one member and filled only when given. pH by layer, `[step * layers + layer]`. */
  readonly layerPh?: Float64Array;
  /** Flux of the reported layers by step, `[step * FLUXES.length + flux]`. */
  readonly ledger?: Float64Array;
  /** Share left of each material, `[step * charges + charge]`. */
  readonly left?: Float64Array;
  /** Base content of the reported layers at start and end. */
  readonly content?: Float64Array;
}

/** Members worked on together: few enough to keep their state in the processor's nearest memory. */
const BLOCK = 100;

/** Runs all members, by the quickest kernel that will do; returns how many logarithms and exponentials it evaluated. */
export function run(scenario: Scenario, set: ParameterSet, output: KernelOutput): number {
  const { layerPh, ledger, left, content } = output;
  const onlyPh = !layerPh && !ledger && !left && !content;
  if (scenario.layers === 1 && onlyPh) return runSingle(scenario, set, output.ph);
  return runLayers(scenario, set, output);
}

/** The general kernel: any number of layers, every output. */
export function runLayers(scenario: Scenario, set: ParameterSet, output: KernelOutput): number {
  let evaluated = 0;
  for (let from = 0; from < set.count; from += BLOCK)
    evaluated += runBlock(scenario, part(set, from, Math.min(set.count, from + BLOCK)), output, from, set.count);
  return evaluated;
}

/** Runs some members; their pH goes to columns `from` and on of an output `columns` wide. */
function runBlock(scenario: Scenario, set: ParameterSet, output: KernelOutput, from: number, columns: number): number {
  const state = createState(scenario, set);
  const { steps, layers, charges } = scenario;
  const { count, active, step, remaining } = state;
  let evaluated = 0;
  if (output.content) output.content[0] = content(scenario, state);
  for (let t = 0; t < steps; t++) {
    let n = count;
    for (let m = 0; m < count; m++) active[m] = m;
    step.fill(1);
    remaining.fill(1);
    let first = true;
    while (n > 0) {
      for (let l = 0; l < layers; l++) {
        phPass(set, state, l, n);
        ratePass(scenario, set, state, t, l, n);
      }
      evaluated += 2 * layers * n;
      if (first) report(scenario, state, output, t, t * columns + from);
      first = false;
      state.gain.fill(0);
      for (let c = 0; c < charges.count; c++)
        if ((charges.start[c] as number) <= t) materialPass(scenario, set, state, t, c, n);
      const go = checkPass(scenario, state, n);
      for (let l = 0; l < layers; l++) takeLayer(state, l, go);
      if (output.ledger)
        for (let i = 0; i < go; i++) book(output.ledger, scenario, set, state, t, state.ready[i] as number);
      for (let c = 0; c < charges.count; c++)
        if ((charges.start[c] as number) <= t) takeMaterial(scenario, state, t, c, go);
      n = goOn(state, n - go, go);
    }
  }
  for (let m = 0; m < count; m++) active[m] = m;
  for (let l = 0; l < layers; l++) phPass(set, state, l, count);
  report(scenario, state, output, steps, steps * columns + from);
  if (output.content) output.content[1] = content(scenario, state);
  return evaluated + 2 * layers * count;
}

/** Pass 1a: pH, H and buffer capacity of a layer from its base content. The only place with logarithms and exponentials. */
function phPass(set: ParameterSet, state: State, l: number, n: number): void {
  const { count, active, q, buffer, ph, acidity, capacity } = state;
  const { pm, w } = set;
  const row = l * count;
  for (let i = 0; i < n; i++) {
    const m = active[i] as number;
    const at = row + m;
    const b = buffer[at] as number;
    const width = w[m] as number;
    const x = (q[at] as number) / (b * width);
    const root = Math.sqrt(x * x + 1);
    capacity[at] = b * root;
    // asinh(x) = ln(x + √(x² + 1)); no garden's x is so far below zero that the sum would cancel.
    const now = (pm[m] as number) + width * Math.log(x + root);
    ph[at] = now;
    acidity[at] = Math.exp(-Math.LN10 * now);
  }
}

/** Pass 1b: rates of a layer's base content, a whole outer step at the present state. */
function ratePass(scenario: Scenario, set: ParameterSet, state: State, t: number, l: number, n: number): void {
  const { layers, carbonateRate, gibbsite } = scenario;
  const { count, active, q, store, qCal, steadyAcid, acidity, rate, draw, leach, aluminium } = state;
  const { bicarbonate, cap } = state;
  const { drainage, eta, etaAcid } = set;
  const row = l * count;
  const water = (scenario.drainage[t] as number) * 1000 * EQUIVALENT;
  const still = (scenario.fixed[t] as number) * (scenario.top[l] as number);
  const given = scenario.given[t * layers + l] as number;
  const taken = scenario.taken[t * layers + l] as number;
  const fast = given !== 0 || taken !== 0;
  const gibbsite3 = 3 * gibbsite;
  for (let i = 0; i < n; i++) {
    const m = active[i] as number;
    const at = row + m;
    const h = acidity[at] as number;
    const drained = water * (drainage[m] as number);
    const out = drained * Math.min((bicarbonate[m] as number) / h, cap[m] as number);
    const sour = drained * h * (1 + gibbsite3 * h * h);
    const short = (qCal[at] as number) - (q[at] as number);
    leach[at] = out;
    aluminium[at] = sour;
    draw[at] = short < 0 || (store[at] as number) > 0 ? short * carbonateRate : 0;
    rate[at] = still - (steadyAcid[at] as number) - out + sour;
    if (fast) rate[at] = (rate[at] as number) + given * (eta[m] as number) - taken * (etaAcid[m] as number);
  }
  if (l > 0) exchangePass(scenario, set, state, l, n);
}

/** What drains from the layer above enters this one, and soil is swapped between them. */
function exchangePass(scenario: Scenario, set: ParameterSet, state: State, l: number, n: number): void {
  const { count, active, q, rate, leach, aluminium, moved } = state;
  const { exchange } = set;
  const perMass = scenario.swap / (scenario.mass[l] as number);
  const perMassAbove = scenario.swap / (scenario.mass[l - 1] as number);
  for (let i = 0; i < n; i++) {
    const m = active[i] as number;
    const at = l * count + m;
    const above = at - count;
    const move = (exchange[m] as number) * ((q[above] as number) * perMassAbove - (q[at] as number) * perMass);
    moved[at] = move;
    rate[at] = (rate[at] as number) + (leach[above] as number) - (aluminium[above] as number) + move;
    rate[above] = (rate[above] as number) - move;
  }
}

/** Pass 2: what one material gives to its layer within the inner step. */
function materialPass(scenario: Scenario, set: ParameterSet, state: State, t: number, c: number, n: number): void {
  const { charges, tables } = scenario;
  const { count, active, step, ph, loss, left, clock, gain, newLoss, newLeft, pHCal, gScale, perSulfurDay } = state;
  const row = (charges.layer[c] as number) * count;
  const own = c * count;
  const speed = charges.speed[c] as number;
  const amount = charges.amount[c] as number;
  const table = charges.table[c] as number;
  const inverseEnd = charges.inverseEnd[c] as number;
  const isSulfur = charges.sulfur[c] === 1;
  const waits = charges.waits[c] === 1;
  const present = t === charges.start[c] ? (charges.firstShare[c] as number) : 1;
  const days = present * speed * ((isSulfur ? scenario.sulfurDays[t] : scenario.limeDays[t]) as number);
  const clockDays = present * (scenario.sulfurDays[t] as number);
  const { kLime, lag } = set;
  const effect = isSulfur ? set.etaAcid : set.eta;
  const sign = isSulfur ? -amount : amount;
  for (let i = 0; i < n; i++) {
    const m = active[i] as number;
    const at = own + m;
    const now = ph[row + m] as number;
    let further = days * (step[m] as number);
    if (isSulfur) {
      const before = clock[at] as number;
      const after = before + clockDays * (step[m] as number);
      const wait = waits ? (lag[m] as number) : 0;
      if (before < wait) further = after <= wait ? 0 : (further * (after - wait)) / (after - before);
      if (now < SULFUR_STOPS + 1) further *= Math.max(0, now - SULFUR_STOPS);
      further *= perSulfurDay[m] as number;
    } else further *= (kLime[m] as number) * Math.max(0, (pHCal[m] as number) - now) * (gScale[m] as number);
    const lost = (loss[at] as number) + further;
    const rest = lookUp(tables, table, inverseEnd, lost);
    newLoss[at] = lost;
    newLeft[at] = rest;
    gain[row + m] = (gain[row + m] as number) + sign * (effect[m] as number) * ((left[at] as number) - rest);
  }
}

/**
 * Pass 3a: shortens the step of members whose pH would move too far. Those stay at the front of `active`, the others
 * go to `ready`; returns how many are ready.
 */
function checkPass(scenario: Scenario, state: State, n: number): number {
  const { count, active, ready, step, rate, draw, gain, capacity } = state;
  const all = scenario.layers * count;
  let stay = 0;
  let go = 0;
  for (let i = 0; i < n; i++) {
    const m = active[i] as number;
    const length = step[m] as number;
    // How many times the largest allowed change the step would make.
    let excess = 1;
    for (let at = m; at < all; at += count) {
      const change = Math.abs(((rate[at] as number) + (draw[at] as number)) * length + (gain[at] as number));
      const most = MAX_STEP_PH * (capacity[at] as number);
      if (change > excess * most) excess = change / most;
    }
    if (excess > 1 && length > SMALLEST) {
      step[m] = Math.max(SMALLEST, (length * 0.9) / excess);
      active[stay++] = m;
    } else ready[go++] = m;
  }
  return go;
}

/** Pass 3b: takes the step of a layer. */
function takeLayer(state: State, l: number, go: number): void {
  const { count, ready, step, q, store, rate, draw, gain, drawn } = state;
  const row = l * count;
  for (let i = 0; i < go; i++) {
    const m = ready[i] as number;
    const at = row + m;
    const length = step[m] as number;
    const wanted = (draw[at] as number) * length;
    const had = store[at] as number;
    const got = wanted < had ? wanted : had;
    drawn[at] = got;
    store[at] = had - got;
    q[at] = (q[at] as number) + (rate[at] as number) * length + (gain[at] as number) + got;
  }
}

/** Pass 3c: takes the step of a material. */
function takeMaterial(scenario: Scenario, state: State, t: number, c: number, go: number): void {
  const { charges } = scenario;
  const { count, ready, step, loss, left, clock, newLoss, newLeft } = state;
  const row = c * count;
  for (let i = 0; i < go; i++) {
    const at = row + (ready[i] as number);
    loss[at] = newLoss[at] as number;
    left[at] = newLeft[at] as number;
  }
  if (charges.sulfur[c] !== 1) return;
  const days = (scenario.sulfurDays[t] as number) * (t === charges.start[c] ? (charges.firstShare[c] as number) : 1);
  for (let i = 0; i < go; i++) {
    const m = ready[i] as number;
    clock[row + m] = (clock[row + m] as number) + days * (step[m] as number);
  }
}

/** Pass 3d: members not yet at the end of the outer step join those that stay; returns how many are active. */
function goOn(state: State, stay: number, go: number): number {
  const { active, ready, step, remaining } = state;
  let n = stay;
  for (let i = 0; i < go; i++) {
    const m = ready[i] as number;
    const length = step[m] as number;
    const rest = (remaining[m] as number) - length;
    if (rest <= 1e-9) continue;
    remaining[m] = rest;
    step[m] = Math.min(rest, length * 1.5);
    active[n++] = m;
  }
  return n;
}

/** Writes the pH of step t; for one member also layers and materials. */
function report(scenario: Scenario, state: State, output: KernelOutput, t: number, row: number): void {
  const { layers, reported, weight, charges } = scenario;
  const { count, ph, left } = state;
  const to = output.ph;
  if (reported === 1) for (let m = 0; m < count; m++) to[row + m] = ph[m] as number;
  else
    for (let m = 0; m < count; m++) {
      let mean = 0;
      for (let l = 0; l < reported; l++) mean += (ph[l * count + m] as number) * (weight[l] as number);
      to[row + m] = mean;
    }
  if (output.layerPh) for (let l = 0; l < layers; l++) output.layerPh[t * layers + l] = ph[l * count] as number;
  if (output.left)
    for (let c = 0; c < charges.count; c++) output.left[t * charges.count + c] = left[c * count] as number;
}

function content(scenario: Scenario, state: State): number {
  let sum = 0;
  for (let l = 0; l < scenario.reported; l++) sum += state.q[l * state.count] as number;
  return sum;
}
