import { BICARBONATE } from './carbonate.ts';
import { STEPS } from './loss-table.ts';
import type { ParameterSet } from './parameter-set.ts';
import { P } from './parameters.ts';
import type { Scenario } from './scenario.ts';

/** The state of all members and their constants. Arrays with layers or materials run `[layer * count + member]`. */
export interface State {
  readonly count: number;
  /** Base content Q of each layer, kg CaCO3/m². */
  readonly q: Float64Array;
  /** Carbonate store C of each layer, kg CaCO3/m². */
  readonly store: Float64Array;
  /** Diameter lost so far by each material, m. */
  readonly loss: Float64Array;
  /** Share of each material left. */
  readonly left: Float64Array;
  /** Days at 25 °C each sulfur has lain in the ground. */
  readonly clock: Float64Array;

  // Constants of a member.
  /** beta0 · M of each layer, kg CaCO3/m²/pH. */
  readonly buffer: Float64Array;
  /** The place's own acid and that of nitrogen in one step, by layer. */
  readonly steadyAcid: Float64Array;
  readonly pHCal: Float64Array;
  /** 1/(pH_cal − 5). */
  readonly gScale: Float64Array;
  /** Base content of each layer at pH_cal. */
  readonly qCal: Float64Array;
  /** KH K1 p. */
  readonly bicarbonate: Float64Array;
  /** Highest alkalinity of drainage, mol/L. */
  readonly cap: Float64Array;
  /** Acid per kg N. */
  readonly acidPerN: Float64Array;
  /** Sulfur diameter lost in a day at 25 °C, m. */
  readonly perSulfurDay: Float64Array;

  // Work of one inner step, per whole outer step unless it says otherwise.
  readonly ph: Float64Array;
  /** H, mol/L. */
  readonly acidity: Float64Array;
  /** Rate of Q without materials and carbonate. */
  readonly rate: Float64Array;
  /** Rate of base drawn from carbonate. */
  readonly draw: Float64Array;
  /** dQ/dpH. */
  readonly capacity: Float64Array;
  readonly leach: Float64Array;
  readonly aluminium: Float64Array;
  readonly moved: Float64Array;
  /** What materials give within the inner step. */
  readonly gain: Float64Array;
  readonly newLoss: Float64Array;
  readonly newLeft: Float64Array;
  /** Length of the inner step and what remains of the outer one, 0 to 1. */
  readonly step: Float64Array;
  readonly remaining: Float64Array;
  /** Members still under way in the outer step. */
  readonly active: Int32Array;
  /** Members that take their step in this round. */
  readonly ready: Int32Array;
  /** What carbonate gave in this round, by layer. */
  readonly drawn: Float64Array;
}

/** Share left of a material after a loss, by its table; straight between entries. */
export function lookUp(tables: Float64Array, table: number, inverseEnd: number, loss: number): number {
  const place = Math.sqrt(loss * inverseEnd) * STEPS;
  if (place >= STEPS) return 0;
  const cell = place | 0;
  const low = tables[table + cell] as number;
  return low + (place - cell) * ((tables[table + cell + 1] as number) - low);
}

/** Makes room for all members and puts each at its start. */
export function createState(scenario: Scenario, set: ParameterSet): State {
  const { layers, charges, tables } = scenario;
  const { count } = set;
  const each = () => new Float64Array(count);
  const eachLayer = () => new Float64Array(count * layers);
  const eachCharge = () => new Float64Array(count * charges.count);
  const state: State = {
    count,
    q: eachLayer(),
    store: eachLayer(),
    loss: eachCharge(),
    left: eachCharge(),
    clock: eachCharge(),
    buffer: eachLayer(),
    steadyAcid: eachLayer(),
    pHCal: each(),
    gScale: each(),
    qCal: eachLayer(),
    bicarbonate: each(),
    cap: each(),
    acidPerN: each(),
    perSulfurDay: each(),
    ph: eachLayer(),
    acidity: eachLayer(),
    rate: eachLayer(),
    draw: eachLayer(),
    capacity: eachLayer(),
    leach: eachLayer(),
    aluminium: eachLayer(),
    moved: eachLayer(),
    gain: eachLayer(),
    newLoss: eachCharge(),
    newLeft: eachCharge(),
    step: each(),
    remaining: each(),
    active: new Int32Array(count),
    ready: new Int32Array(count),
    drawn: eachLayer(),
  };
  for (let m = 0; m < count; m++) {
    const ph0 = set.ph0[m] as number;
    const pm = set.pm[m] as number;
    const w = set.w[m] as number;
    const p = set.pCO2[m] as number;
    // A bed that reads above the plateau has its own plateau there; with free carbonate its reading is the plateau.
    const pHCal = scenario.carbonate > 0 && ph0 >= 7 ? ph0 : Math.max(set.pHCal[m] as number, ph0);
    state.pHCal[m] = pHCal;
    state.gScale[m] = 1 / (pHCal - 5);
    state.bicarbonate[m] = BICARBONATE * p;
    state.cap[m] = P.alkalinityCap * Math.cbrt(p / 0.01);
    state.acidPerN[m] = P.acidPerN * (scenario.nitrogenCharge + (set.leached[m] as number));
    state.perSulfurDay[m] = (2 * (set.kSulfur[m] as number)) / P.rhoSulfur;
    for (let l = 0; l < layers; l++) {
      const mass = scenario.mass[l] as number;
      const buffer = (set.beta0[m] as number) * mass;
      state.buffer[l * count + m] = buffer;
      state.steadyAcid[l * count + m] =
        scenario.stepYears * (set.a0[m] as number) * (scenario.weight[l] as number) +
        scenario.nitrogen * (state.acidPerN[m] as number) * (scenario.top[l] as number);
      state.qCal[l * count + m] = buffer * w * Math.sinh((pHCal - pm) / w);
      state.q[l * count + m] = buffer * w * Math.sinh((ph0 + (scenario.layerOffset[l] as number) - pm) / w);
      state.store[l * count + m] = scenario.carbonate * mass;
    }
    // What lay in the ground before the start has lost diameter at the present pH.
    for (let c = 0; c < charges.count; c++) {
      const head = charges.head[c] as number;
      const wait = charges.waits[c] === 1 ? (set.lag[m] as number) : 0;
      const lost =
        charges.sulfur[c] === 1
          ? (state.perSulfurDay[m] as number) * Math.max(0, head - wait)
          : (set.kLime[m] as number) * head * Math.max(0, pHCal - ph0) * (state.gScale[m] as number);
      const at = c * count + m;
      state.clock[at] = head;
      state.loss[at] = lost * (charges.speed[c] as number);
      state.left[at] = lookUp(
        tables,
        charges.table[c] as number,
        charges.inverseEnd[c] as number,
        state.loss[at] as number,
      );
    }
  }
  return state;
}
