import type { MessageCode } from '@sorrel/almanac/words';
import { dangerWord, nutrientName, type UsableLine, type UsablePicture, usableWord } from '@sorrel/engine/nutrients';
import type { PrintOptions } from '../options.ts';
import { type Speaker, speakerFor } from '../speaker.ts';
import { element, label, line, safe, through } from './svg.ts';

export interface UsablePictureOptions extends Pick<PrintOptions, 'system' | 'catalogue' | 'language'> {
  /** Makes the ids of one picture its own when several stand on a page. */
  readonly id?: string;
  /** Letters of a page it is set in; without them those of the screen. */
  readonly letters?: string;
}

const WIDTH = 640;
const LEFT = 150;
const RIGHT = 620;
const TOP = 92;
/** Height of one lane and of the line inside it. */
const LANE = 30;
const TALL = 20;

/** Letters every screen has. */
const SCREEN = 'system-ui,"Helvetica Neue",Arial,sans-serif';
const STYLE =
  `text{font-family:${SCREEN};font-size:13px;fill:#000}` +
  '.title{font-size:17px;font-weight:600}' +
  '.small{font-size:11px}.band{fill:#ddd}.line{fill:none;stroke:#000;stroke-width:2}.floor{stroke:#888;stroke-width:.6}' +
  '.risk{fill:none;stroke:#000;stroke-width:2;stroke-dasharray:3 2}.grid{stroke:#ccc;stroke-width:.6}' +
  '.today{stroke:#000;stroke-width:1.6}.planned{stroke:#000;stroke-width:1.6;stroke-dasharray:6 4}';

/**
 * How usable each nutrient is along the pH scale, drawn as SVG: one small line a nutrient in a lane of its own, all on
 * one axis, each with the grey band of its uncertainty; dangers below with broken lines; today's pH and the planned one
 * as uprights. Without colour, and said in words for who cannot see it.
 *
 * @param picture figures of the picture
 */
export function usablePictureSvg(picture: UsablePicture, options: UsablePictureOptions): string {
  // No day stands in this picture.
  const speaker = speakerFor({ ...options, printed: '' });
  const id = options.id ?? 'usable';
  const x = (ph: number): number => LEFT + ((ph - picture.low) / (picture.high - picture.low)) * (RIGHT - LEFT);
  const bottom = TOP + picture.lines.length * LANE;
  const height = bottom + 66;
  const title = speaker.word('nutrients.picture-title');
  const series = speaker.word(`nutrients.picture-series-${picture.series}`);
  const scale = Array.from({ length: picture.high - picture.low + 1 }, (_, index) => picture.low + index);
  const parts = [
    element('title', { id: `${id}-title` }, safe(title)),
    element('desc', { id: `${id}-desc` }, safe(told(picture, speaker))),
    element('style', {}, options.letters === undefined ? STYLE : STYLE.replace(SCREEN, `"${options.letters}"`)),
    element('rect', { width: WIDTH, height, fill: '#fff' }),
    label(16, 26, title, { class: 'title' }),
    label(16, 44, series, { class: 'small' }),
    ...scale.map((ph) => line(x(ph), TOP, x(ph), bottom, { class: 'grid' })),
    ...picture.lines.map((one, index) => lane(one, TOP + (index + 1) * LANE - 5, x, speaker)),
    line(LEFT, bottom, RIGHT, bottom, { class: 'today' }),
    ...scale.map((ph) => label(x(ph), bottom + 18, String(ph), { 'text-anchor': 'middle' })),
    label(LEFT - 12, bottom + 18, speaker.word('picture.axis'), { 'text-anchor': 'end' }),
    mark(picture.today, 'today', picture, x, bottom, speaker, 58),
    mark(picture.planned, 'planned', picture, x, bottom, speaker, 73),
    label(16, bottom + 46, speaker.word('nutrients.picture-key'), { class: 'small' }),
  ];
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${WIDTH} ${height}`,
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-desc`,
    },
    parts.join(''),
  );
}

function lane(
  { subject, danger, points }: UsableLine,
  floor: number,
  x: (ph: number) => number,
  speaker: Speaker,
): string {
  const y = (value: number): number => floor - value * TALL;
  const band = [
    ...points.map(({ ph, high }) => [x(ph), y(high)] as const),
    ...[...points].reverse().map(({ ph, low }) => [x(ph), y(low)] as const),
  ];
  return [
    element('path', { class: 'band', d: `${through(band)}Z` }),
    line(LEFT, floor, RIGHT, floor, { class: 'floor' }),
    element('path', { class: danger ? 'risk' : 'line', d: through(points.map(({ ph, value }) => [x(ph), y(value)])) }),
    label(LEFT - 12, floor - 4, nameOf(subject, danger, speaker), { 'text-anchor': 'end' }),
  ].join('');
}

const nameOf = (subject: UsableLine['subject'], danger: boolean, speaker: Speaker): string =>
  danger ? speaker.word(`nutrients.name-${subject}` as MessageCode) : nutrientName(subject);

function mark(
  ph: number | undefined,
  kind: 'today' | 'planned',
  picture: UsablePicture,
  x: (ph: number) => number,
  bottom: number,
  speaker: Speaker,
  top: number,
): string {
  if (ph === undefined) return '';
  const at = x(Math.min(Math.max(ph, picture.low), picture.high));
  const anchor = at > (LEFT + RIGHT) / 2 ? 'end' : 'start';
  const text = speaker.word(`nutrients.picture-${kind}`, { ph: { value: ph, dimension: 'ph' } });
  return (
    line(at, top, at, bottom, { class: kind }) +
    label(at + (anchor === 'end' ? -5 : 5), top + 9, text, { 'text-anchor': anchor, class: 'small' })
  );
}

/** What the picture shows at the marked pH, in words. */
function told(picture: UsablePicture, speaker: Speaker): string {
  const marks = [picture.today, picture.planned].filter((ph) => ph !== undefined);
  const at = (points: UsableLine['points'], ph: number) =>
    points.reduce((best, point) => (Math.abs(point.ph - ph) < Math.abs(best.ph - ph) ? point : best)).value;
  return (marks.length > 0 ? marks : [picture.low, picture.high])
    .flatMap((ph) =>
      picture.lines.map(({ subject, danger, points }) => {
        const value = at(points, ph);
        const code: MessageCode = danger
          ? `nutrients.danger-word-${dangerWord(value)}`
          : `nutrients.word-${usableWord(value)}`;
        const parameters = {
          subject: nameOf(subject, danger, speaker),
          word: speaker.word(code),
          ph: { value: ph, dimension: 'ph' } as const,
        };
        return speaker.word('nutrients.picture-line', parameters);
      }),
    )
    .join(' ');
}
