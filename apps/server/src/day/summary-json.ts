import type { z } from '@hono/zod-openapi';
import { phClasses } from '@sorrel/almanac/ph-classes';
import { type Neighbourhood, summaryOf } from '@sorrel/engine/day';
import type { DayOptions, DaySample } from '@sorrel/print';
import type { daySummary } from '../schemas/day.ts';

type Summary = z.output<typeof daySummary>;

const groupOf = ({ name, samples, medianPh, classes }: Neighbourhood): Summary['all'] => ({
  name: name ?? null,
  samples,
  medianPh: medianPh ?? null,
  classes: classes.map(({ count }) => count),
});

/** The summary for a screen: figures as they are, sentences as on paper. */
export async function summaryJson(samples: readonly DaySample[], options: DayOptions): Promise<Summary> {
  const { summaryWords } = await import('@sorrel/print');
  const summary = summaryOf(samples);
  const said = summaryWords(samples, summary, options);
  return {
    samples: summary.samples,
    classes: phClasses.map(({ name, low, high }) => ({ name, low: low ?? null, high: high ?? null })),
    all: groupOf(summary.all),
    neighbourhoods: summary.neighbourhoods.map(groupOf),
    decisions: summary.decisions.map(({ decision, count }, index) => ({
      decision,
      text: said.decisions[index] ?? '',
      count,
    })),
    problems: summary.problems.map(({ code, count }, index) => ({ code, text: said.problems[index] ?? '', count })),
    shopping: summary.shopping.map(({ product, needed }, index) => ({
      product: product.name,
      needed: said.shopping[index] ?? '',
      kilograms: needed,
    })),
    calls: said.calls,
  };
}
