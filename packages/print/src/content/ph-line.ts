import type { Place, Recommendation } from '@sorrel/engine/plan';
import { printPh } from '@sorrel/engine/units';
import type { Speaker } from '../speaker.ts';
import { verdictOf } from './decision-words.ts';

/** One place on the pH line. Figures are pH; the texts say the same for those who do not see the picture. */
export interface PhRow {
  readonly name: string;
  readonly verdict: string;
  readonly today?: { readonly mean: number; readonly from: number; readonly to: number; readonly sd: number };
  readonly wanted?: { readonly low: number; readonly high: number };
  /** Where the plan's arrow points; only when something is to be spread. */
  readonly aim?: number;
  readonly todayText: string;
  readonly wantedText: string;
}

export interface PhLine {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
  readonly rows: readonly PhRow[];
  readonly alternative: string;
  readonly key: { readonly today: string; readonly smear: string; readonly wanted: string; readonly plan: string };
  readonly sour: string;
  readonly limy: string;
}

/** Standard deviations to either side that hold 19 in 20. */
const NINETEEN_IN_TWENTY = 1.96;

/** The shared pH line: every place a row on one axis, which is always at least 4 to 8 so that sheets compare. */
export const phLine = (pairs: readonly (readonly [Place, Recommendation])[], speaker: Speaker): PhLine =>
  phLineOf(
    pairs.map(([place, advice]) => phRow(place, advice, speaker)),
    speaker,
  );

/** Rows of anything that has a pH and a range, on one axis. */
export function phLineOf(rows: readonly PhRow[], speaker: Speaker): PhLine {
  const values = rows.flatMap((row) => [
    row.today?.from ?? 5,
    row.today?.to ?? 5,
    row.wanted?.low ?? 5,
    row.wanted?.high ?? 5,
    row.aim ?? 5,
  ]);
  const low = Math.max(0, Math.floor(Math.min(4, ...values)));
  const high = Math.min(14, Math.ceil(Math.max(8, ...values)));
  return {
    low,
    high,
    ticks: Array.from({ length: high - low + 1 }, (_, index) => low + index),
    rows,
    alternative: rows.map((row) => `${row.name}: ${row.todayText}, ${row.wantedText}. ${row.verdict}.`).join(' '),
    key: {
      today: speaker.word('print.key-today'),
      smear: speaker.word('print.key-smear'),
      wanted: speaker.word('print.key-wanted'),
      plan: speaker.word('print.key-plan'),
    },
    sour: speaker.word('print.line-sour'),
    limy: speaker.word('print.line-limy'),
  };
}

function phRow(place: Place, advice: Recommendation, speaker: Speaker): PhRow {
  const { present, target } = advice;
  const shared = target.conflicts.length === 0;
  const [low, high, aim] = [printPh(target.low), printPh(target.high), printPh(target.aim)];
  const moves = advice.applications.length > 0;
  return {
    name: place.name,
    verdict: verdictOf(advice.decision, speaker),
    ...(present === undefined
      ? {}
      : {
          today: {
            mean: present.mean,
            sd: present.sd,
            from: present.mean - NINETEEN_IN_TWENTY * present.sd,
            to: present.mean + NINETEEN_IN_TWENTY * present.sd,
          },
        }),
    ...(shared ? { wanted: { low: target.low, high: target.high } } : {}),
    ...(moves ? { aim: target.aim } : {}),
    todayText:
      present === undefined
        ? speaker.word('print.line-no-reading')
        : speaker.word('print.line-today', { ph: printPh(present.mean) }),
    wantedText: !shared
      ? conflictText(advice, speaker)
      : moves
        ? speaker.word('print.line-wanted-aim', { low, high, aim })
        : speaker.word('print.line-wanted', { low, high }),
  };
}

/** Plants that share no pH, pair by pair. */
export const conflictText = ({ target }: Recommendation, speaker: Speaker): string =>
  target.conflicts.map(({ a, b }) => speaker.word('print.target-conflict', { a, b })).join(' ');
