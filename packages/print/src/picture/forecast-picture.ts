import type { Foreseen } from '@sorrel/engine/plan';
import type { PrintOptions } from '../options.ts';
import { type Speaker, speakerFor } from '../speaker.ts';
import { axes, grid } from './axes.ts';
import { ERROR, type Frame, frameOf } from './frame.ts';
import { legend } from './legend.ts';
import { element, label, line, n, safe, through } from './svg.ts';
import { symbol } from './symbols.ts';

export interface PictureOptions extends Pick<PrintOptions, 'system' | 'catalogue' | 'language'> {
  /** Makes the ids of one picture its own when several stand on a page. */
  readonly id?: string;
}

const WIDTH = 760;
const PLOT = { left: 48, right: 650, top: 64, bottom: 348 } as const;
const ROW = 19;

const STYLE =
  `text{font:13px system-ui,"Helvetica Neue",Arial,sans-serif;fill:#000}.title{font-size:17px;font-weight:600}
.strong{font-weight:600}.grid{stroke:#ddd;stroke-width:.8}.axis{stroke:#000;stroke-width:1}.b95{fill:#e4e4e4;stroke:#666;
stroke-width:.8;stroke-dasharray:2 2}.b80{fill:#c6c6c6}.b50{fill:#9a9a9a}.median{fill:none;stroke:#000;stroke-width:2.6}
.range{stroke:#000;stroke-width:1.2;stroke-dasharray:7 4}.bracket{fill:none;stroke:#000;stroke-width:1.6}
.today{stroke:#000;stroke-width:1}.lane{stroke:#555;stroke-width:.8;stroke-dasharray:1 3}
.bar{stroke:#000;stroke-width:1.4}.dot{fill:#fff;stroke:#000;stroke-width:2}.full{fill:#000;stroke:#000;stroke-width:1.4}
.hollow{fill:#fff;stroke:#000;stroke-width:1.4}`.replaceAll('\n', '');

/**
 * The pH of a place through time, drawn as SVG: the median and its bands, tests as dots with error bars, what was put on
 * and what would be as triangles, the wanted range as a bracket. It needs no colour and survives a photocopier; what it
 * shows is told in words as well, for who cannot see it.
 *
 * @param place its name
 * @param seen what is foreseen
 */
export function forecastPicture(place: string, seen: Foreseen, options: PictureOptions): string {
  const speaker = speakerFor({ ...options, printed: seen.today });
  const frame = frameOf(seen, PLOT.left, PLOT.right, PLOT.top, PLOT.bottom);
  const shown = seen.marks.filter(({ date }) => date >= frame.from && date <= frame.to);
  const listTop = PLOT.bottom + 74;
  const legendTop = listTop + shown.length * ROW + (shown.length > 0 ? 10 : -16);
  const height = legendTop + 62;
  const id = options.id ?? 'forecast';
  const title = speaker.word('picture.title', {
    place,
    from: speaker.day(frame.from),
    to: speaker.day(frame.to),
  });
  const parts = [
    element('title', { id: `${id}-title` }, safe(title)),
    element('desc', { id: `${id}-desc` }, safe(told(seen, speaker))),
    element('style', {}, STYLE),
    element('rect', { width: WIDTH, height, fill: '#fff' }),
    label(16, 26, title, { class: 'title' }),
    grid(frame),
    bands(seen, frame),
    axes(frame, speaker.word('picture.axis')),
    wanted(seen, frame, speaker),
    lanes(shown, frame),
    element('path', { class: 'median', d: through(seen.forecast.median.map((ph, i) => at(frame, seen, i, ph))) }),
    moments(seen, frame, speaker),
    dots(seen, frame),
    listed(shown, listTop, speaker),
    legend(seen, legendTop, speaker),
  ];
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${WIDTH} ${n(height)}`,
      width: WIDTH,
      height,
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-desc`,
      lang: options.language ?? 'en',
    },
    parts.join('\n'),
  );
}

const at = (frame: Frame, { forecast }: Foreseen, index: number, ph: number): [number, number] => [
  frame.x(forecast.dates[index] ?? ''),
  frame.y(ph),
];

/** What the picture shows, in sentences. */
function told(seen: Foreseen, speaker: Speaker): string {
  const { dates, median, bands, inside } = seen.forecast;
  const last = dates.length - 1;
  const most = bands.find(({ share }) => share === 0.8);
  const ph = (value: number | undefined) => (value ?? 0).toFixed(1);
  const sentences = [speaker.word('picture.now', { ph: ph(median[0]) })];
  for (const index of [Math.min(52, last), last].filter((each, i, all) => all.indexOf(each) === i)) {
    const [low, high] = [ph(most?.low[index]), ph(most?.high[index])];
    sentences.push(
      speaker.word('picture.later', { date: speaker.day(dates[index] ?? ''), ph: ph(median[index]), low, high }),
    );
    const chance = inside[index];
    if (chance !== undefined) sentences.push(speaker.word('picture.inside', { chance: speaker.share(chance) }));
  }
  sentences.push(speaker.word('picture.tests', { count: seen.tests.length }));
  return sentences.join(' ');
}

function bands(seen: Foreseen, frame: Frame): string {
  return [...seen.forecast.bands]
    .sort((a, b) => b.share - a.share)
    .map(({ share, low, high }) => {
      const up = high.map((ph, i) => at(frame, seen, i, ph));
      const down = low.map((ph, i) => at(frame, seen, i, ph)).reverse();
      return element('path', { class: `b${Math.round(share * 100)}`, d: `${through([...up, ...down])}Z` });
    })
    .join('');
}

function wanted({ range }: Foreseen, frame: Frame, speaker: Speaker): string {
  if (range === undefined) return '';
  const [low, high, x] = [frame.y(range.low), frame.y(range.high), frame.right + 8];
  return [
    line(frame.left, low, frame.right, low, { class: 'range' }),
    line(frame.left, high, frame.right, high, { class: 'range' }),
    element('path', {
      class: 'bracket',
      d: through([
        [x, high],
        [x + 8, high],
        [x + 8, low],
        [x, low],
      ]),
    }),
    label(x + 14, (low + high) / 2 - 3, speaker.word('picture.wanted'), { class: 'strong' }),
    label(x + 14, (low + high) / 2 + 13, `${range.low.toFixed(1)} – ${range.high.toFixed(1)}`),
  ].join('');
}

/** Today and the day to test again, named above the plot so that their names do not meet. */
function moments({ today, forecast }: Foreseen, frame: Frame, speaker: Speaker): string {
  const [now, later] = [frame.x(today), frame.x(forecast.retest.date)];
  const near = later - now < 90;
  const end = frame.right - later < 40;
  return [
    line(now, frame.top - 8, now, frame.bottom, { class: 'today' }),
    label(now, frame.top - 12, speaker.word('picture.today'), {
      'text-anchor': near && now - frame.left > 40 ? 'end' : near ? 'start' : 'middle',
      class: 'strong',
    }),
    element('path', {
      class: 'hollow',
      d: `${through([
        [later, frame.bottom - 7],
        [later + 6, frame.bottom],
        [later, frame.bottom + 7],
        [later - 6, frame.bottom],
      ])}Z`,
    }),
    line(later, frame.top - 8, later, frame.bottom - 7, { class: 'lane' }),
    label(
      near && now - frame.left <= 40 ? Math.max(later, now + 48) : later,
      frame.top - 12,
      speaker.word('picture.retest'),
      {
        'text-anchor': end ? 'end' : near ? 'start' : 'middle',
      },
    ),
  ].join('');
}

type Marks = Foreseen['marks'];

/** Triangles under the axis, each with the number of its line in the list below. */
function lanes(marks: Marks, frame: Frame): string {
  const y = frame.bottom + 40;
  return marks
    .map((mark, index) => {
      const x = frame.x(mark.date);
      // Numbers of neighbours that would run together start to the right of their sign.
      const crowded = index > 0 && Math.abs(x - frame.x(marks[index - 1]?.date ?? '')) < 14;
      return [
        line(x, frame.top, x, y - 8, { class: 'lane' }),
        symbol(mark, x, y),
        label(x + (crowded ? 3 : 0), y + 20, String(index + 1), { 'text-anchor': crowded ? 'start' : 'middle' }),
      ].join('');
    })
    .join('');
}

function listed(marks: Marks, top: number, speaker: Speaker): string {
  return marks
    .map((mark, index) => {
      const { name, date, mass, state } = mark;
      const said =
        mass === undefined
          ? speaker.word('picture.mark', { name, date: speaker.day(date) })
          : speaker.word('picture.mark-mass', { name, mass: speaker.weight(mass), date: speaker.day(date) });
      const text = state === 'only if a retest asks' ? speaker.word('picture.mark-maybe', { mark: said }) : said;
      const y = top + index * ROW;
      return `${label(PLOT.left, y + 12, String(index + 1), { 'text-anchor': 'end' })}${symbol(mark, PLOT.left + 16, y + 8)}${label(PLOT.left + 30, y + 12, text)}`;
    })
    .join('');
}

function dots({ tests }: Foreseen, frame: Frame): string {
  return tests
    .filter(({ date }) => date >= frame.from)
    .map(({ date, ph, sd, outlier }) => {
      const [x, y, high, low] = [frame.x(date), frame.y(ph), frame.y(ph + ERROR * sd), frame.y(ph - ERROR * sd)];
      return [
        line(x, high, x, low, { class: 'bar' }),
        line(x - 4, high, x + 4, high, { class: 'bar' }),
        line(x - 4, low, x + 4, low, { class: 'bar' }),
        element('circle', { class: 'dot', cx: x, cy: y, r: 5 }),
        outlier
          ? `${line(x - 8, y - 8, x + 8, y + 8, { class: 'bar' })}${line(x - 8, y + 8, x + 8, y - 8, { class: 'bar' })}`
          : '',
      ].join('');
    })
    .join('');
}
