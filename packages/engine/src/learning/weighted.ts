/** Figures of a weighted sample. Weights are not negative; they need not add up to 1. */

const total = (weights: Float64Array): number => {
  let sum = 0;
  for (const weight of weights) sum += weight;
  return sum;
};

/** Weighted mean and standard deviation. @throws RangeError when no weight is over 0 */
export function weightedMoments(
  values: Float64Array,
  weights: Float64Array,
): { readonly mean: number; readonly sd: number } {
  const all = total(weights);
  if (!(all > 0)) throw new RangeError('a weighted mean needs a weight over 0');
  let mean = 0;
  for (let i = 0; i < values.length; i++) mean += ((values[i] as number) * (weights[i] as number)) / all;
  let variance = 0;
  for (let i = 0; i < values.length; i++)
    variance += (((values[i] as number) - mean) ** 2 * (weights[i] as number)) / all;
  return { mean, sd: Math.sqrt(variance) };
}

/** Places of the values from smallest to largest. */
export function ascending(values: Float64Array): Uint32Array {
  return Uint32Array.from(values.keys()).sort((a, b) => (values[a] as number) - (values[b] as number));
}

/**
 * Weighted quantiles, straight between the middles of neighbouring weights.
 *
 * @param shares 0 to 1, each
 * @param order `ascending(values)` when known
 */
export function weightedQuantiles(
  values: Float64Array,
  weights: Float64Array,
  shares: readonly number[],
  order: Uint32Array = ascending(values),
): number[] {
  const all = total(weights);
  if (!(all > 0)) throw new RangeError('a quantile needs a weight over 0');
  return shares.map((share) => {
    const wanted = share * all;
    let before = 0;
    let lastValue = Number.NaN;
    let lastMiddle = 0;
    for (const i of order) {
      const weight = weights[i] as number;
      if (weight === 0) continue;
      const value = values[i] as number;
      const middle = before + weight / 2;
      if (middle >= wanted) {
        if (Number.isNaN(lastValue)) return value;
        return lastValue + ((value - lastValue) * (wanted - lastMiddle)) / (middle - lastMiddle);
      }
      before += weight;
      lastValue = value;
      lastMiddle = middle;
    }
    return lastValue;
  });
}

/** Share of the weight on values over a limit. */
export function shareOver(values: Float64Array, weights: Float64Array, limit: number): number {
  let over = 0;
  for (let i = 0; i < values.length; i++) if ((values[i] as number) > limit) over += weights[i] as number;
  return over / total(weights);
}

/** How many equally weighted members the sample is worth, `(sum w)² / sum w²` (Kish; common practice). */
export function effectiveCount(weights: Float64Array): number {
  let squares = 0;
  for (const weight of weights) squares += weight * weight;
  return total(weights) ** 2 / squares;
}

/**
 * Picks `count` members in proportion to their weights, at even distances from one random start (systematic
 * resampling): the same start gives the same members.
 *
 * @param start 0 to 1
 */
export function resample(weights: Float64Array, count: number, start: number): Uint32Array {
  const all = total(weights);
  const picked = new Uint32Array(count);
  let member = 0;
  let sum = weights[0] as number;
  for (let i = 0; i < count; i++) {
    const wanted = ((i + start) / count) * all;
    while (sum < wanted && member < weights.length - 1) sum += weights[++member] as number;
    picked[i] = member;
  }
  return picked;
}
