import { sources } from '@sorrel/almanac/sources';
import type { Derivation, Step, Term } from '@sorrel/engine/derivation';
import type { Speaker } from '../speaker.ts';

export interface WorkingRow {
  readonly number: string;
  readonly title: string;
  readonly formula: string;
  readonly terms: string;
  /** The figure alone, and the same with its symbol. */
  readonly figure: string;
  readonly value: string;
  readonly sources: string;
}

export interface Working {
  readonly rows: readonly WorkingRow[];
  /** The rows that fit a handout of two pages: all of them, or the last ones, nearest to the result. */
  readonly shown: readonly WorkingRow[];
  /** Says which rows are left out of `shown`; empty when none is. */
  readonly earlier: string;
  /** Whether there is room for the publications beside `shown`. */
  readonly roomForSources: boolean;
  readonly sources: readonly { readonly key: string; readonly text: string }[];
}

/** Rows of small print that fit beside the longest safety box, and how many of them leave room for the publications. */
const MOST_ROWS = 26;
const MOST_ROWS_WITH_SOURCES = 18;
/** The same on a page whose code leads to all of them. */
const MOST_ROWS_BESIDE_A_CODE = 12;

/** A figure of the working as a person reads it: four figures, no exponent for everyday sizes. */
export function figure(value: number | string): string {
  if (typeof value === 'string') return value;
  const size = Math.abs(value);
  if (!Number.isFinite(value)) return String(value);
  return size !== 0 && (size < 1e-4 || size >= 1e6) ? value.toExponential(2) : String(Number(value.toPrecision(4)));
}

/** The working behind a plan as rows of a table, with the publications cited in it. Figures from memory carry the mark. */
export function workingOf(derivation: Derivation | undefined, speaker: Speaker, coded = false): Working {
  const steps = derivation?.steps ?? [];
  const mark = speaker.word('print.memory-mark');
  const keys = new Set(steps.flatMap((step) => [...step.sources, ...step.terms.flatMap((term) => term.source ?? [])]));
  const rows = steps.map(
    (step): WorkingRow => ({
      number: String(step.index + 1),
      title: sentence(step.title),
      formula: step.formula,
      terms: step.terms.map((term) => termText(term, speaker)).join('; '),
      figure: withUnit(step) + (step.basis === 'memory' ? mark : ''),
      value: `${step.symbol} = ${withUnit(step)}${step.basis === 'memory' ? mark : ''}`,
      sources: sourcesOf(step).join(', '),
    }),
  );
  const leftOut = Math.max(0, rows.length - (coded ? MOST_ROWS_BESIDE_A_CODE : MOST_ROWS));
  return {
    rows,
    shown: rows.slice(leftOut),
    earlier: leftOut === 0 ? '' : speaker.word('print.working-earlier', { number: leftOut }),
    roomForSources: !coded && rows.length <= MOST_ROWS_WITH_SOURCES,
    sources: [...keys].sort().map((key) => ({ key, text: short(key) })),
  };
}

const titles = new Map(
  sources.map((row) => [row.key, [row.title, row.year].filter((part) => part !== undefined).join(', ')]),
);

/** A publication by title and year; its address stands on the page of sources. */
export const short = (key: string): string => titles.get(key) ?? key;

const sourcesOf = (step: Step): string[] => [
  ...new Set([...step.sources, ...step.terms.flatMap((term) => term.source ?? [])]),
];

function termText(term: Term, speaker: Speaker): string {
  const origin =
    term.origin === 'step' && term.step !== undefined
      ? speaker.word('print.origin-step', { number: term.step + 1 })
      : (term.source ?? speaker.word(term.origin === 'entered' ? 'print.origin-entered' : 'print.origin-choice'));
  return speaker.word('print.term', { symbol: term.symbol, value: withUnit(term), origin });
}

const withUnit = ({ value, unit }: Pick<Term, 'value' | 'unit'>): string =>
  unit === '' || unit === '1' ? figure(value) : `${figure(value)} ${unit}`;

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
