import type { Arrangement } from '@sorrel/engine/placing';
import { arrangementContent } from './content/arrangement-content.ts';
import { arrangementDesign } from './designs/arrangement.typ.ts';
import { type PrintOptions, paperOf } from './options.ts';
import { speakerFor } from './speaker.ts';
import { typeset } from './typeset/typeset.ts';

export interface ArrangementOptions extends PrintOptions {
  /** Name of the garden. */
  readonly garden: string;
  /** Day the arrangement was made for; default the day of printing. */
  readonly planned?: string;
}

/**
 * What to grow where, season by season: each place with its plants and why, what to keep apart, what found no place, and
 * what this way saves. A page or two for a garden of twenty places.
 *
 * @returns PDF
 * @throws RangeError when a message of the arrangement has a code that nobody knows
 */
export function arrangementSheet(arrangement: Arrangement, options: ArrangementOptions): Uint8Array {
  const speaker = speakerFor(options);
  const { word, day } = speaker;
  const data = {
    title: word('print.title-arrangement', { garden: options.garden }),
    paper: paperOf(options),
    language: options.language ?? 'en',
    size: 11,
    words: {
      'local-rules': word('print.local-rules'),
      printed: word('print.printed', { date: day(options.printed) }),
      'page-word': word('print.page'),
      arrangement: word('print.placing-title'),
      made: word('print.placing-made', { date: day(options.planned ?? options.printed) }),
      place: word('print.placing-place'),
      why: word('print.placing-why'),
      nothing: word('print.placing-nothing'),
      apart: word('print.placing-apart'),
      unmet: word('print.placing-unmet'),
      saves: word('print.placing-saves-title'),
      note: word('print.placing-note'),
      columns: [
        word('print.placing-moved'),
        word('print.placing-material'),
        word('print.placing-money'),
        word('print.placing-months'),
        word('print.placing-places'),
        word('print.placing-left-out'),
      ],
    },
    sheet: arrangementContent(options.garden, arrangement, speaker),
  };
  return typeset(arrangementDesign, data, { tagged: true, fonts: options.fonts ?? [] });
}
