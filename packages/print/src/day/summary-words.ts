import { phClasses } from '@sorrel/almanac/ph-classes';
import { en, type MessageCode } from '@sorrel/almanac/words';
import type { DaySummary } from '@sorrel/engine/day';
import { decisionOf } from '../content/decision-words.ts';
import { type Speaker, speakerFor } from '../speaker.ts';
import type { DayOptions, DaySample } from './day-sample.ts';

/** What the summary says, in the order of its figures. */
export interface SummaryWords {
  readonly decisions: readonly string[];
  readonly problems: readonly string[];
  /** What is needed of each product. */
  readonly shopping: readonly string[];
  /** Ranges of the classes of pH. */
  readonly ranges: readonly string[];
  readonly calls: readonly {
    readonly code: string;
    readonly person: string | null;
    readonly place: string;
    readonly name: string;
    readonly why: string[];
  }[];
}

/** Puts a day's summary into words. */
export function summaryWords(
  samples: readonly DaySample[],
  summary: DaySummary,
  options: DayOptions,
): SummaryWords & { readonly calls: SummaryWords['calls'][number][] } {
  const speaker = speakerFor(options);
  const byCode = new Map(samples.map((sample) => [sample.code, sample]));
  return {
    decisions: summary.decisions.map(({ decision }) => decisionOf(decision, speaker)),
    problems: summary.problems.map(({ code }) => general(code, speaker, options)),
    shopping: summary.shopping.map(({ needed }) => speaker.amount(needed, 'mass')),
    ranges: phRanges(speaker),
    calls: summary.calls.map(({ code, why }) => {
      const sample = byCode.get(code);
      return {
        code,
        person: sample?.person ?? null,
        place: sample?.place.id ?? '',
        name: sample?.place.name ?? '',
        why: why.map(speaker.say),
      };
    }),
  };
}

/** A sentence that stands for many samples: what differs from one to the next is left open. */
function general(code: MessageCode, speaker: Speaker, { catalogue = en }: DayOptions): string {
  const short = `print.day-found-${code.split('.')[1]}`;
  if (isCode(short)) return speaker.word(short);
  const open = speaker.word('print.day-some');
  const names = [...(catalogue[code] ?? en[code]).matchAll(/\{(\w+)\}/g)].map(([, name = '']) => [name, open]);
  return speaker.word(code, Object.fromEntries(names));
}

function phRanges(speaker: Speaker): string[] {
  const tenths = (ph: number): string => ph.toFixed(1);
  return phClasses.map(({ low, high }) => {
    if (low === undefined) return speaker.word('print.day-under', { ph: tenths((high ?? 0) + 0.1) });
    if (high === undefined) return speaker.word('print.day-over', { ph: tenths(low - 0.1) });
    return speaker.word('print.day-between', { low: tenths(low), high: tenths(high) });
  });
}

const isCode = (code: string): code is MessageCode => code in en;
