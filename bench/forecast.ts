import { grade } from '../packages/almanac/src/assumed-sieves.ts';
import { forecast } from '../packages/engine/src/forecast/forecast.ts';
import { createRandom } from '../packages/engine/src/forecast/random.ts';
import type { ForecastInput } from '../packages/engine/src/forecast/types.ts';

/** The place the issue names: limed bed, hard water, a feed; 2,000 members over three years. */
const place: ForecastInput = {
  start: '2026-03-01',
  years: 3,
  layer: { depth: 0.15, bulkDensity: 1200, coarseFragments: 0, mass: 180 },
  curve: { beta0: 0.0021, sdLog: 0.3, pm: 5.6, w: 1.6, carbonate: 0, plateau: 7.9 },
  present: { mean: 5.4, sd: 0.15 },
  medium: 'mineral',
  weather: { climate: 'maritime', irrigation: 0.15 },
  applications: [
    {
      date: '2026-03-15',
      currency: 0.4,
      reaction: { law: 'dissolving', sieves: grade('ordinary limestone'), speed: 1 },
      incorporation: 0.15,
    },
  ],
  yearly: { nitrogen: { amount: 0.008, charge: 0 }, waterAlkalinity: 2 },
  range: { low: 6, high: 7 },
  members: 2000,
  seed: 1,
};

/** Seconds of a bare loop over typed arrays that evaluates `count` exponentials. */
function bareLoop(now: () => number, count: number, input: Float64Array, output: Float64Array): number {
  const begin = now();
  const { length } = input;
  for (let done = 0; done < count; done += length) {
    const upTo = Math.min(length, count - done);
    for (let i = 0; i < upTo; i++) output[i] = Math.exp(input[i] as number);
  }
  return now() - begin;
}

/** Seconds of processor time this process has used. */
function processorSeconds(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

/** Other work on the machine only ever adds time, so the quickest round is the truest. */
const quickest = (values: readonly number[]): number => Math.min(...values);

/**
 * Time of a whole forecast against a bare typed-array loop with the same number of exponentials, in the same run.
 *
 * @param rounds measured after a few rounds of warming up; the quickest of each are compared
 * @param now a clock in seconds: in Node the processor time of this process, so that other work on the machine does not
 *   count; in a browser pass `() => performance.now() / 1000`
 * @returns both times in seconds and their ratio
 */
export function benchForecast(
  rounds = 25,
  now: () => number = processorSeconds,
): { ratio: number; forecast: number; bare: number; exponentials: number } {
  const random = createRandom(7);
  const input = Float64Array.from({ length: 4096 }, () => -10 * random.uniform());
  const output = new Float64Array(4096);
  const exponentials = forecast(place).evaluated;
  for (let i = 0; i < 15; i++) {
    forecast(place);
    bareLoop(now, exponentials, input, output);
  }
  const ours: number[] = [];
  const bare: number[] = [];
  for (let i = 0; i < rounds; i++) {
    const begin = now();
    forecast(place);
    ours.push(now() - begin);
    bare.push(bareLoop(now, exponentials, input, output));
  }
  return { ratio: quickest(ours) / quickest(bare), forecast: quickest(ours), bare: quickest(bare), exponentials };
}
