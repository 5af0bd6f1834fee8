import type { Foreseen } from '@sorrel/engine/plan';

/** Where things stand in the picture, in its own units. */
export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly low: number;
  readonly high: number;
  readonly from: string;
  readonly to: string;
  x(date: string): number;
  y(ph: number): number;
}

/** A test's error bar holds 95 % of where the pH may be. */
export const ERROR = 1.96;
/** Older entries than this many years are not drawn: they would press the rest together. */
const YEARS_BACK = 5;

const MARGIN = 10;

const day = (date: string): number => Date.parse(`${date}T00:00:00Z`);

/** The first day drawn: the oldest test or dressing of the last five years. */
function firstDay({ tests, marks, today }: Foreseen): string {
  const oldest = `${Number(today.slice(0, 4)) - YEARS_BACK}${today.slice(4)}`;
  const dates = [...tests, ...marks].map(({ date }) => date).filter((date) => date >= oldest);
  return [today, ...dates].sort()[0] ?? today;
}

/** Axes that hold everything that is drawn, in half steps of pH. */
export function frameOf(seen: Foreseen, left: number, right: number, top: number, bottom: number): Frame {
  const from = firstDay(seen);
  const { dates, median, bands } = seen.forecast;
  const to = dates.at(-1) ?? seen.today;
  const values = [
    ...median,
    ...bands.flatMap((band) => [...band.low, ...band.high]),
    ...seen.tests.filter(({ date }) => date >= from).flatMap(({ ph, sd }) => [ph - ERROR * sd, ph + ERROR * sd]),
    ...(seen.range === undefined ? [] : [seen.range.low, seen.range.high]),
  ];
  const low = Math.floor(Math.min(...values) * 2 - 0.1) / 2;
  const high = Math.ceil(Math.max(...values) * 2 + 0.1) / 2;
  const [start, end] = [day(from), day(to)];
  return {
    left,
    right,
    top,
    bottom,
    low,
    high,
    from,
    to,
    // A little room at the left keeps the first sign off the axis.
    x: (date) => left + MARGIN + ((day(date) - start) / Math.max(1, end - start)) * (right - left - MARGIN),
    y: (ph) => bottom - ((ph - low) / (high - low)) * (bottom - top),
  };
}
