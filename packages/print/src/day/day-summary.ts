import { type Neighbourhood, summaryOf } from '@sorrel/engine/day';
import { printPh } from '@sorrel/engine/units';
import { daySummaryDesign } from '../designs/day-summary.typ.ts';
import { paperOf } from '../options.ts';
import { type Speaker, speakerFor } from '../speaker.ts';
import { typeset } from '../typeset/typeset.ts';
import type { DayOptions, DaySample } from './day-sample.ts';
import { summaryWords } from './summary-words.ts';

/**
 * A soil day for the one who runs it: how sour the soils are, by neighbourhood when that was asked, what was found most
 * often, what to buy together, and who to call.
 *
 * @param samples in check-in order
 * @returns PDF
 */
export function daySummary(samples: readonly DaySample[], options: DayOptions): Uint8Array {
  const speaker = speakerFor(options);
  const { word, day } = speaker;
  const summary = summaryOf(samples);
  const said = summaryWords(samples, summary, options);
  // One group without a name is all there is to tell.
  const told = summary.neighbourhoods.some(({ name }) => name !== undefined) ? summary.neighbourhoods : [];
  const data = {
    title: options.title,
    paper: paperOf(options),
    language: options.language ?? 'en',
    size: 11,
    words: {
      'local-rules': word('print.local-rules'),
      printed: word('print.printed', { date: day(options.printed) }),
      'page-word': word('print.page'),
      purpose: word('print.day-summary'),
      private: word('print.day-private'),
      soils: word('print.day-soils'),
      'soils-note': word('print.day-soils-note'),
      neighbourhood: word('print.day-neighbourhood'),
      ph: word('print.line-ph'),
      decisions: word('print.day-decisions'),
      problems: word('print.day-problems'),
      calls: word('print.day-calls'),
      'calls-note': word('print.day-calls-note'),
      'no-call': word('print.day-no-call'),
      code: word('print.day-code'),
      person: word('print.day-person'),
      why: word('print.day-why'),
      shopping: word('print.day-shopping'),
      'shopping-note': word('print.day-shopping-note'),
      'shopping-none': word('print.shopping-none'),
    },
    facts: [countText(summary.samples, speaker), day(options.planned ?? options.printed)],
    ranges: said.ranges,
    all: groupOf(summary.all, word('print.day-all'), said.ranges, speaker),
    groups: told.map((group) => groupOf(group, group.name ?? word('print.day-no-neighbourhood'), said.ranges, speaker)),
    decisions: summary.decisions.map(({ count }, index) => ({ count, text: said.decisions[index] ?? '' })),
    problems: summary.problems
      .slice(0, MOST_PROBLEMS)
      .map(({ count }, index) => ({ count, text: said.problems[index] ?? '' })),
    shopping: summary.shopping.map(({ product }, index) => ({
      name: product.name,
      needed: said.shopping[index] ?? '',
    })),
    calls: said.calls.map(({ code, person, name, why }) => ({
      code,
      who: [person, name].filter((each) => each !== null && each !== code).join(', '),
      why: why.join(' '),
    })),
  };
  return typeset(daySummaryDesign, data, { fonts: options.fonts ?? [] });
}

const MOST_PROBLEMS = 8;

const countText = (count: number, { word }: Speaker): string =>
  count === 1 ? word('print.day-sample') : word('print.day-samples', { count });

function groupOf(group: Neighbourhood, name: string, ranges: readonly string[], speaker: Speaker) {
  const { word } = speaker;
  const counts = group.classes.map(({ count }) => count);
  const read = counts.flatMap((count, index) =>
    count === 0 ? [] : [word('print.day-count-in', { count, range: ranges[index] ?? '' })],
  );
  return {
    name,
    samples: countText(group.samples, speaker),
    median: group.medianPh === undefined ? '' : word('print.day-median', { ph: printPh(group.medianPh) }),
    counts,
    alternative: word('print.day-soils-alternative', { group: name, counts: read.join(', ') }),
  };
}
