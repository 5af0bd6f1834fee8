import { grade } from '@sorrel/almanac/assumed-sieves';
import { describe, expect, it } from 'vitest';
import { simulate } from '../forecast/model.ts';
import { centralSet } from '../forecast/parameter-set.ts';
import type { ForecastApplication } from '../forecast/types.ts';
import { addDays } from '../units/calendar.ts';
import { bedModel } from './bed-model.ts';
import type { BedRecord } from './types.ts';

const START = '2020-03-01';
const applications: readonly ForecastApplication[] = [
  {
    date: '2020-03-20',
    currency: 0.6,
    reaction: { law: 'dissolving', sieves: grade('fine limestone'), speed: 1 },
    incorporation: 0.15,
  },
  {
    date: '2020-03-20',
    currency: -0.4,
    reaction: { law: 'oxidising', sieves: grade('sulfur dust'), speed: 1, waits: true },
    incorporation: 0.15,
  },
  { date: '2020-03-20', currency: 0.4, reaction: { law: 'fast', days: 14 }, incorporation: 0.15 },
];

describe('the model of a bed', () => {
  it.each([600, 1500])('keeps within 0.02 pH of the weekly forecast once the wait is over (%i days)', (length) => {
    for (const application of applications)
      for (const ph of [5, 6.5]) {
        const record: BedRecord = {
          tests: [],
          applications: [application],
          layer: { depth: 0.15, bulkDensity: 1200, coarseFragments: 0, mass: 180 },
          curve: { beta0: 0.0021, sdLog: 0.45, pm: 5.6, w: 1.6, carbonate: 0, plateau: 7.9 },
          medium: 'mineral',
        };
        const after = [112, 203, 399, length];
        const days = after.map((day) => addDays(START, day));
        const model = bedModel(record, START, days, { mean: ph, sd: 0.1 });
        const ours = model.predict(new Float64Array(model.latents.list.length), 1);
        const weekly = simulate(model.input, centralSet(model.input), {
          stepDays: 7,
          steps: Math.ceil(length / 7) + 1,
        });
        for (const [i, day] of after.entries()) {
          const week = Math.floor(day / 7);
          const from = weekly.ph[week] as number;
          const exact = from + (day / 7 - week) * ((weekly.ph[week + 1] as number) - from);
          expect(Math.abs((ours[i] as number) - exact)).toBeLessThan(0.02);
        }
      }
  });
});
