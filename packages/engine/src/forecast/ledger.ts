import type { State } from './kernel-state.ts';
import type { ParameterSet } from './parameter-set.ts';
import type { Scenario } from './scenario.ts';

/** What moved the base content of the reported layers, in the order of the ledger's columns. */
export const FLUXES = [
  'lime',
  'sulfur',
  'given',
  'taken',
  'missed',
  'own',
  'nitrogen',
  'fixed',
  'leaching',
  'aluminium',
  'carbonate',
  'exchange',
] as const;
export type Flux = (typeof FLUXES)[number];

/** Books one inner step of one member, kg CaCO3/m². */
export function book(
  ledger: Float64Array,
  scenario: Scenario,
  set: ParameterSet,
  state: State,
  t: number,
  m: number,
): void {
  const { layers, reported, charges } = scenario;
  const { count } = state;
  const step = state.step[m] as number;
  const add = (flux: Flux, amount: number) => {
    const at = t * FLUXES.length + FLUXES.indexOf(flux);
    ledger[at] = (ledger[at] as number) + amount;
  };
  const eta = set.eta[m] as number;
  const etaAcid = set.etaAcid[m] as number;
  for (let l = 0; l < reported; l++) {
    const top = scenario.top[l] as number;
    const given = (scenario.given[t * layers + l] as number) * step;
    const taken = (scenario.taken[t * layers + l] as number) * step;
    add('given', given);
    add('taken', -taken);
    add('missed', (eta - 1) * given + (1 - etaAcid) * taken);
    add('own', -(set.a0[m] as number) * scenario.stepYears * (scenario.weight[l] as number) * step);
    add('nitrogen', -(state.acidPerN[m] as number) * scenario.nitrogen * top * step);
    add('fixed', (scenario.fixed[t] as number) * top * step);
    add('carbonate', state.drawn[l * count + m] as number);
  }
  const last = (reported - 1) * count + m;
  add('leaching', -(state.leach[last] as number) * step);
  add('aluminium', (state.aluminium[last] as number) * step);
  if (reported < layers) add('exchange', -(state.moved[reported * count + m] as number) * step);
  for (let c = 0; c < charges.count; c++) {
    if ((charges.start[c] as number) > t || (charges.layer[c] as number) >= reported) continue;
    const at = c * count + m;
    const reacted = (charges.amount[c] as number) * ((state.left[at] as number) - (state.newLeft[at] as number));
    if (charges.sulfur[c] === 1) {
      add('sulfur', -reacted);
      add('missed', (1 - etaAcid) * reacted);
    } else {
      add('lime', reacted);
      add('missed', (eta - 1) * reacted);
    }
  }
}
