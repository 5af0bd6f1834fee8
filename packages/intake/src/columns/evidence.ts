import { type DateEvidence, dateEvidence } from '../cells/date.ts';
import { readFigure } from '../cells/figure.ts';
import { type Decimal, decimalShown } from '../cells/number.ts';
import { usualWord } from '../cells/words.ts';

/** What the cells of a column look like. */
export interface Evidence {
  /** Different cells that say something, as they were written. */
  readonly samples: readonly string[];
  /** Figures among them, in the file's notation. */
  readonly figures: readonly number[];
  /** Shares of the cells that say something: are figures, days, carry a unit of their own. */
  readonly numeric: number;
  readonly dated: number;
  readonly withUnit: number;
  readonly dates: DateEvidence;
}

const MOST_SAMPLES = 400;

/** Different cells of one column that say something. */
export function samplesOf(rows: readonly (readonly string[])[], at: number): string[] {
  const found = new Set<string>();
  for (const cells of rows) {
    const cell = cells[at]?.trim() ?? '';
    if (cell === '' || usualWord(cell) !== undefined) continue;
    found.add(cell);
    if (found.size >= MOST_SAMPLES) break;
  }
  return [...found];
}

export interface DecimalEvidence {
  readonly point: number;
  readonly comma: number;
  /** Cells such as `1,250` that could be read both ways, and one of them. */
  readonly either: number;
  readonly example: string | undefined;
}

/** What the cells of all columns of figures tell of the decimal sign. */
export function decimalEvidence(columns: readonly (readonly string[])[]): DecimalEvidence {
  let [point, comma, either] = [0, 0, 0];
  let example: string | undefined;
  for (const cells of columns)
    for (const cell of cells) {
      const shown = decimalShown(cell);
      if (shown === 'point') point += 1;
      else if (shown === 'comma') comma += 1;
      else if (shown === 'either') {
        either += 1;
        example ??= cell;
      }
    }
  return { point, comma, either, example };
}

/** The sign that stands before the tenths, when all cells agree on one. */
export const decimalOf = ({ point, comma }: DecimalEvidence): Decimal | undefined =>
  point > 0 && comma === 0 ? 'point' : comma > 0 && point === 0 ? 'comma' : undefined;

/** Looks at the cells of one column. */
export function evidenceOf(samples: readonly string[], decimal: Decimal | undefined): Evidence {
  const figures: number[] = [];
  let [numeric, withUnit] = [0, 0];
  for (const cell of samples) {
    const figure = readFigure(cell, decimal ?? 'point');
    if (figure.kind === 'text') continue;
    const unit = 'unit' in figure ? figure.unit : undefined;
    if (unit !== undefined && /^[a-z]{4,}/i.test(unit) && !unit.includes('/')) continue;
    numeric += 1;
    if (unit !== undefined) withUnit += 1;
    if (figure.kind === 'number') figures.push(figure.value);
  }
  const dates = dateEvidence(samples);
  const share = (count: number) => (samples.length === 0 ? 0 : count / samples.length);
  return {
    samples,
    figures,
    numeric: share(numeric),
    withUnit: share(withUnit),
    dated: dates.possible.length > 0 && samples.length > 0 && !numericOnly(samples) ? 1 : 0,
    dates,
  };
}

const numericOnly = (samples: readonly string[]): boolean => samples.every((cell) => /^\d+(?:[.,]\d+)?$/.test(cell));

/** Share of the figures that lie inside a range once multiplied; 1 when there are none. */
export function shareInside(
  figures: readonly number[],
  factor: number,
  low: number | undefined,
  high: number | undefined,
): number {
  if (figures.length === 0) return 1;
  const inside = figures.filter(
    (value) =>
      value * factor >= (low ?? Number.NEGATIVE_INFINITY) && value * factor <= (high ?? Number.POSITIVE_INFINITY),
  );
  return inside.length / figures.length;
}
