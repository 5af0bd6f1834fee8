import type { Foreseen } from '@sorrel/engine/plan';
import { pageWidth } from './layout.ts';
import { day } from './speak.ts';
import { timeWords } from './time-words.ts';

interface Signs {
  readonly median: string;
  /** Bands of 50, 80 and 95 %. */
  readonly bands: readonly [string, string, string];
  readonly range: string;
  readonly test: string;
  readonly odd: string;
  readonly error: string;
  readonly up: string;
  readonly down: string;
  readonly maybeUp: string;
  readonly maybeDown: string;
  readonly side: string;
  readonly corner: string;
  readonly across: string;
  readonly tick: string;
  readonly retest: string;
}

const FANCY: Signs = {
  median: '━',
  bands: ['▓', '▒', '░'],
  range: '╌',
  test: '●',
  odd: '×',
  error: '│',
  up: '▲',
  down: '▼',
  maybeUp: '△',
  maybeDown: '▽',
  side: '│',
  corner: '└',
  across: '─',
  tick: '┬',
  retest: '◇',
};
const ASCII: Signs = {
  median: '#',
  bands: ['=', ':', '.'],
  range: '-',
  test: 'O',
  odd: 'X',
  error: '|',
  up: '^',
  down: 'v',
  maybeUp: '(^)',
  maybeDown: '(v)',
  side: '|',
  corner: '+',
  across: '-',
  tick: '+',
  retest: '?',
};

const ROWS = 16;
const ERROR = 1.96;
const YEARS_BACK = 5;
const LEFT = 7;

const dayOf = (date: string): number => Date.parse(`${date}T00:00:00Z`);

/**
 * The pH through time as a picture of letters: the median inside its bands, tests with their error bars, dressings as
 * triangles under the axis, the wanted range as two broken lines. Plain ASCII when it must.
 */
export function chartText(seen: Foreseen, unicode: boolean, width = pageWidth()): string {
  const signs = unicode ? FANCY : ASCII;
  const { forecast, range, today } = seen;
  const oldest = `${Number(today.slice(0, 4)) - YEARS_BACK}${today.slice(4)}`;
  const from =
    [today, ...[...seen.tests, ...seen.marks].map(({ date }) => date).filter((date) => date >= oldest)].sort()[0] ??
    today;
  const to = forecast.dates.at(-1) ?? today;
  const cells = width - LEFT - 2;
  const column = (date: string): number =>
    Math.round(((dayOf(date) - dayOf(from)) / Math.max(1, dayOf(to) - dayOf(from))) * (cells - 1));
  const tests = seen.tests.filter(({ date }) => date >= from);
  const wide = forecast.bands.find(({ share }) => share === 0.95);
  const values = [
    ...(wide === undefined ? forecast.median : [...wide.low, ...wide.high]),
    ...tests.flatMap(({ ph, sd }) => [ph - ERROR * sd, ph + ERROR * sd]),
    ...(range === undefined ? [] : [range.low, range.high]),
  ];
  const low = Math.floor(Math.min(...values) * 4) / 4;
  const high = Math.ceil(Math.max(...values) * 4) / 4;
  const row = (ph: number): number => Math.round(((high - ph) / (high - low)) * (ROWS - 1));
  const field = Array.from({ length: ROWS }, () => Array.from({ length: cells }, () => ' '));
  const put = (x: number, y: number, sign: string): void => {
    const line = field[y];
    if (line !== undefined && x >= 0 && x < cells) line[x] = sign;
  };
  const bands = [...forecast.bands].sort((a, b) => b.share - a.share);
  const now = column(today);
  for (let x = now; x < cells; x++) {
    const index = Math.min(
      forecast.dates.length - 1,
      Math.round(((x - now) / Math.max(1, cells - 1 - now)) * (forecast.dates.length - 1)),
    );
    for (const band of bands) {
      const sign = signs.bands[band.share === 0.5 ? 0 : band.share === 0.8 ? 1 : 2];
      for (let y = row(band.high[index] ?? 0); y <= row(band.low[index] ?? 0); y++) put(x, y, sign);
    }
  }
  if (range !== undefined)
    for (const ph of [range.low, range.high])
      for (let x = 0; x < cells; x += 2) if (field[row(ph)]?.[x] === ' ') put(x, row(ph), signs.range);
  for (let x = now; x < cells; x++) {
    const index = Math.round(((x - now) / Math.max(1, cells - 1 - now)) * (forecast.dates.length - 1));
    put(x, row(forecast.median[index] ?? 0), signs.median);
  }
  for (const { date, ph, sd, outlier } of tests) {
    const x = column(date);
    for (let y = row(ph + ERROR * sd); y <= row(ph - ERROR * sd); y++) put(x, y, signs.error);
    put(x, row(ph), outlier ? signs.odd : signs.test);
  }
  const named = new Map<number, string>();
  for (let ph = Math.ceil(low * 2) / 2; ph <= high; ph += 0.5) named.set(row(ph), ph.toFixed(1));
  if (range !== undefined) for (const ph of [range.low, range.high]) named.set(row(ph), `${ph.toFixed(1)}*`);
  const lines = field.map((cellsOf, y) => {
    const name = named.get(y) ?? '';
    return `${(name.endsWith('*') ? name : `${name} `).padStart(LEFT - 1)}${signs.side}${cellsOf.join('').trimEnd()}`;
  });
  return [
    timeWords.axis,
    ...lines,
    ...axis(from, to, today, forecast.retest.date, cells, column, signs),
    ...laneOf(seen, from, column, cells, signs),
    '',
    key(seen, from, signs),
  ].join('\n');
}

/** The time axis: a tick at each new year with its number, and the days that matter. */
function axis(
  from: string,
  to: string,
  today: string,
  retest: string,
  cells: number,
  column: (date: string) => number,
  signs: Signs,
): string[] {
  const ticks = Array.from({ length: cells }, () => signs.across);
  const names = Array.from({ length: cells }, () => ' ');
  for (let year = Number(from.slice(0, 4)) + 1; year <= Number(to.slice(0, 4)); year++) {
    const x = column(`${year}-01-01`);
    ticks[x] = signs.tick;
    const text = String(year);
    const start = Math.max(0, Math.min(cells - text.length, x - 1));
    for (let i = 0; i < text.length; i++) names[start + i] = text[i] ?? '';
  }
  ticks[column(today)] = '|';
  ticks[Math.min(cells - 1, column(retest))] = signs.retest;
  const inset = ' '.repeat(LEFT);
  return [`${' '.repeat(LEFT - 1)}${signs.corner}${ticks.join('')}`, `${inset}${names.join('')}`.trimEnd()];
}

/** Dressings under the axis, each with its number. */
function laneOf(
  { marks }: Foreseen,
  from: string,
  column: (date: string) => number,
  cells: number,
  signs: Signs,
): string[] {
  const shown = marks.filter(({ date }) => date >= from);
  if (shown.length === 0) return [];
  const lane = Array.from({ length: cells + 4 }, () => ' ');
  let free = 0;
  for (const [index, mark] of shown.entries()) {
    const text = `${signFor(mark, signs)}${index + 1}`;
    const start = Math.max(free, column(mark.date));
    for (let i = 0; i < text.length; i++) lane[start + i] = text[i] ?? '';
    free = start + text.length + 1;
  }
  return [`${' '.repeat(LEFT)}${lane.join('')}`.trimEnd()];
}

const signFor = ({ effect, state }: Foreseen['marks'][number], signs: Signs): string =>
  state === 'only if a retest asks'
    ? effect === 'sweetens'
      ? signs.maybeUp
      : signs.maybeDown
    : effect === 'sweetens'
      ? signs.up
      : signs.down;

function key(seen: Foreseen, from: string, signs: Signs): string {
  const [half, most, nearly] = signs.bands;
  const lines = [
    timeWords.chartKey(signs.median, half, most, nearly),
    timeWords.chartSigns(`${signs.error}${signs.test}${signs.error}`, '|', signs.retest),
  ];
  if (seen.tests.some(({ outlier }) => outlier)) lines.push(timeWords.chartOdd(signs.odd));
  for (const [index, mark] of seen.marks.filter(({ date }) => date >= from).entries()) {
    const said = `${signFor(mark, signs)}${index + 1} ${day(mark.date)}: ${mark.name}`;
    lines.push(mark.state === 'only if a retest asks' ? `${said} ${timeWords.maybe}` : said);
  }
  return lines.map((line) => `  ${line}`).join('\n');
}
