const DAY = 86_400_000;

export const dayNumber = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / DAY;
const isoOf = (day: number): string => new Date(day * DAY).toISOString().slice(0, 10);

export type LinearScale = (value: number) => number;

/** Maps `from..to` onto `start..end`; a domain without length maps to the start. */
export const linear =
  (from: number, to: number, start: number, end: number): LinearScale =>
  (value) =>
    to === from ? start : start + ((value - from) * (end - start)) / (to - from);

/**
 * First days of months to mark on a time axis: every 1, 2, 3, 6 or 12 months, as dense as fits.
 *
 * @param most marks at most, at least 2
 */
export function monthTicks(from: string, to: string, most: number): readonly string[] {
  const first = new Date(`${from}T00:00:00Z`);
  const months = (dayNumber(to) - dayNumber(from)) / 30.4375;
  const every = [1, 2, 3, 6, 12, 24, 60].find((step) => months / step <= most) ?? 120;
  const ticks: string[] = [];
  let year = first.getUTCFullYear();
  let month = Math.ceil(first.getUTCMonth() / every) * every;
  if (first.getUTCDate() > 1 && month === first.getUTCMonth()) month += every;
  for (;;) {
    year += Math.floor(month / 12);
    month %= 12;
    const day = Date.UTC(year, month, 1) / DAY;
    if (day > dayNumber(to)) return ticks;
    ticks.push(isoOf(day));
    month += every;
  }
}

/** Whole and half pH values within a range. */
export function phTicks(low: number, high: number): readonly number[] {
  const step = high - low > 3 ? 1 : 0.5;
  const ticks: number[] = [];
  for (let ph = Math.ceil(low / step) * step; ph <= high + 1e-9; ph += step) ticks.push(ph);
  return ticks;
}
