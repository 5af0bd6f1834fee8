import type { LogEstimate } from '../soil/soil.ts';
import type { ErrorLaw } from './walk.ts';

export interface OneRetest {
  /** Buffer capacity before the retest, in any unit per pH. */
  readonly prior: LogEstimate;
  /** What was put on, in the same unit times pH. */
  readonly dose: number;
  /** Share of the dose that acts, 0 to 1. */
  readonly eta: number;
  /** Change of pH that was seen, and its error. */
  readonly change: number;
  readonly sd: number;
  readonly law?: ErrorLaw;
}

export interface GridPosterior {
  /** Half the chance lies on each side. */
  readonly median: number;
  readonly meanLog: number;
  readonly sdLog: number;
}

const CELLS = 4001;
const REACH = 7;

/**
 * What one retest teaches about the buffer capacity of a straight soil, `change = eta·dose/beta + error`, on an even grid
 * of ln beta: no sampling, no straightening. A witness for the sampler and the quickest way to a hand-checkable figure.
 *
 * @throws RangeError for a dose, share or error that is not over 0
 * Source: dynamics section 7 (MODEL). An extended Kalman step would be biased low in centre and spread.
 */
export function capacityFromRetest({ prior, dose, eta, change, sd, law = 'student' }: OneRetest): GridPosterior {
  if (!(dose !== 0 && eta > 0 && sd > 0 && prior.sdLog > 0)) throw new RangeError('dose, share and errors are needed');
  const logs = new Float64Array(CELLS);
  const weights = new Float64Array(CELLS);
  let total = 0;
  for (let i = 0; i < CELLS; i++) {
    const z = REACH * ((2 * i) / (CELLS - 1) - 1);
    const log = Math.log(prior.median) + prior.sdLog * z;
    const off = (change - (eta * dose) / Math.exp(log)) / sd;
    const chance = law === 'normal' ? Math.exp(-0.5 * off * off) : (1 + off ** 2 / 4) ** -2.5;
    logs[i] = log;
    weights[i] = Math.exp(-0.5 * z * z) * chance;
    total += weights[i] as number;
  }
  let below = 0;
  let median = Number.NaN;
  let meanLog = 0;
  let square = 0;
  for (let i = 0; i < CELLS; i++) {
    const weight = (weights[i] as number) / total;
    const log = logs[i] as number;
    if (below < 0.5 && below + weight >= 0.5) median = log;
    below += weight;
    meanLog += weight * log;
    square += weight * log * log;
  }
  return { median: Math.exp(median), meanLog, sdLog: Math.sqrt(square - meanLog * meanLog) };
}

/**
 * Buffer capacity that one dose and the change it made imply, `beta = eta·B/(M·d)`, kg CaCO3/kg/pH: the sum a gardener
 * can do by hand. Sulfur counts `2000·S/32.065` mmol of acid, 3.12 kg CaCO3 a kg.
 *
 * @param base B, kg CaCO3/m² that has reacted, signed
 * @param mass M, kg soil/m²
 * @param change d, pH, of the sign of `base`
 * @throws RangeError when the pH did not move the way it was pushed
 * Source: acidification section 5 (beta_new); dynamics section 7.
 */
export function capacityByHand(base: number, mass: number, change: number, eta = 1): number {
  const beta = (eta * base) / (mass * change);
  if (!(beta > 0 && Number.isFinite(beta))) throw new RangeError('the pH did not move the way it was pushed');
  return beta;
}
