import type { Place, Recommendation } from '@sorrel/engine/plan';
import { type HandoutExtras, handoutContent } from './content/handout-content.ts';
import { qrPicture } from './content/qr-picture.ts';
import { handoutDesign } from './designs/handout.typ.ts';
import { type PrintOptions, paperOf } from './options.ts';
import { type Speaker, speakerFor } from './speaker.ts';
import { typeset } from './typeset/typeset.ts';

export interface HandoutOptions extends PrintOptions {
  /** Body of 18 pt instead of 12 pt, and more pages. */
  readonly largePrint?: boolean;
  /** Adds pages with every step of the working: formula, values and where each came from. */
  readonly everyStep?: boolean;
  /** Day the plan was made for; default the day of printing. */
  readonly planned?: string;
}

export interface Handout extends HandoutExtras {
  readonly place: Place;
  readonly recommendation: Recommendation;
}

/**
 * A page or two for one gardener: what the soil is, what to do, what to beware of, whom to ask, and the working.
 *
 * @param recommendation of the place; with its derivation kept (`explain`) the working is printed
 * @returns PDF
 * @example writeFileSync('bed.pdf', handout(place, plan, { system: 'us', printed: '2026-10-12', garden: 'Our garden' }))
 */
export const handout = (
  place: Place,
  recommendation: Recommendation,
  options: HandoutOptions & HandoutExtras,
): Uint8Array => {
  const { garden, sampleId, contact, person, url } = options;
  const extras = {
    ...(person === undefined ? {} : { person }),
    ...(url === undefined ? {} : { url }),
    ...(garden === undefined ? {} : { garden }),
    ...(sampleId === undefined ? {} : { sampleId }),
    ...(contact === undefined ? {} : { contact }),
  };
  return handouts([{ place, recommendation, ...extras }], options);
};

/**
 * Many handouts in one PDF, each starting on a page of its own: a soil day's hundreds in seconds.
 *
 * @returns PDF; an empty list gives one empty page
 */
export function handouts(list: readonly Handout[], options: HandoutOptions): Uint8Array {
  const speaker = speakerFor(options);
  const only = list.length === 1 ? list[0] : undefined;
  let codes = 0;
  const data = {
    title:
      only === undefined
        ? speaker.word('print.title-handouts')
        : speaker.word('print.title-handout', { place: only.place.name }),
    paper: paperOf(options),
    language: options.language ?? 'en',
    size: options.largePrint === true ? 18 : 12,
    large: options.largePrint === true,
    'every-step': options.everyStep === true,
    words: layoutWords(speaker, options),
    handouts: list.map(({ place, recommendation, ...extras }) => ({
      ...onPage(handoutContent(place, recommendation, extras, speaker), options),
      qr: extras.url === undefined ? '' : `picture-${codes++}.png`,
    })),
  };
  // One handout is read on a screen too, and by screen readers; a pile of hundreds goes to the printer.
  const pictures = list.flatMap(({ url }) => (url === undefined ? [] : [qrPicture(url)]));
  return typeset(handoutDesign, data, { tagged: only !== undefined, fonts: options.fonts ?? [], pictures });
}

/** Without what this page does not print: three quarters of the words of a handout are the full working. */
function onPage<C extends HandoutContent>(content: C, { everyStep = false }: HandoutOptions): C {
  const { working } = content;
  return {
    ...content,
    working: {
      ...working,
      rows: everyStep ? working.rows : [],
      shown: working.shown.map(({ number, title, figure, sources }) => ({ number, title, figure, sources })),
      sources: everyStep || working.roomForSources ? working.sources : [],
    },
  };
}

type HandoutContent = ReturnType<typeof handoutContent>;

function layoutWords(speaker: Speaker, options: HandoutOptions): Record<string, string> {
  const { word, day } = speaker;
  return {
    'local-rules': word('print.local-rules'),
    printed: word('print.printed', { date: day(options.printed) }),
    'page-word': word('print.page'),
    garden: word('print.garden'),
    'plan-day-label': word('print.plan-of'),
    'plan-day': day(options.planned ?? options.printed),
    sample: word('print.sample'),
    id: word('print.id'),
    ph: word('print.line-ph'),
    when: word('print.when'),
    done: word('print.done'),
    used: word('print.used'),
    on: word('print.on'),
    target: word('print.target'),
    means: word('print.means'),
    know: word('print.know'),
    do: word('print.do'),
    'trust-scale': word('print.trust-scale'),
    safety: word('print.safety'),
    'read-safety': word('print.read-safety'),
    'do-not': word('print.do-not'),
    retest: word('print.retest'),
    'find-out': word('print.find-out'),
    instead: word('print.instead'),
    who: word('print.who'),
    scan: word('print.day-scan'),
    'who-laboratory': word('print.who-laboratory'),
    'who-adviser': word('print.who-adviser'),
    'who-professional': word('print.who-professional'),
    working: word('print.working'),
    need: word('print.working-need'),
    figure: word('print.working-figure'),
    formula: word('print.working-formula'),
    with: word('print.working-with'),
    value: word('print.working-value'),
    source: word('print.working-source'),
    sources: word('print.working-sources'),
    'memory-note': word('print.memory-note'),
  };
}
