import type { CheckCase } from './adapter.ts';
import { type Bound, readTolerance } from './tolerance.ts';

/** One figure of a case beside ours. */
export interface Line {
  readonly key: string;
  readonly published: unknown;
  readonly ours: unknown;
  /** Ours less published, as printed; `same` or `different` where there is nothing to subtract. */
  readonly difference: string;
  readonly bound: Bound;
  readonly within: boolean;
}

export interface Verdict {
  readonly within: boolean;
  readonly lines: readonly Line[];
  readonly remarks: readonly string[];
}

type Figures = Readonly<Record<string, unknown>>;

/** Computer arithmetic leaves dust in the last digits; it is no difference. */
const dust = (a: number, b: number) => 1e-9 * Math.max(Math.abs(a), Math.abs(b));

const isoDate = /^\d{4}-\d{2}-\d{2}$/;

/**
 * Sets our figures beside the published ones and judges each by the case's tolerance. A figure we did not give is a
 * miss. Where the tolerance speaks of a model as well, its figure is looked for under `<key>_model`.
 */
export function compare(check: CheckCase, figures: Figures): Verdict {
  const tolerance = readTolerance(check);
  const remarks = [...tolerance.remarks];
  const lines: Line[] = [];
  for (const [key, published] of Object.entries(check.expected)) {
    const bound = settled(tolerance.boundFor(key), key, published, check.inputs);
    if (bound.kind === 'exact' && tolerance.boundFor(key).kind === 'direction')
      remarks.push(`${key} has no start to take a direction from: taken as exact`);
    lines.push(line(key, published, figures[key], bound));
    if (tolerance.model === undefined || typeof published !== 'number') continue;
    const modelKey = `${key}_model`;
    if (modelKey in figures || tolerance.model.kind !== 'shown')
      lines.push(line(modelKey, published, figures[modelKey], tolerance.model));
  }
  let within = lines.every((one) => one.within);
  if (tolerance.ordered && !sameOrder(lines)) {
    within = false;
    remarks.push('the order of the figures is not kept');
  }
  return { within, lines, remarks };
}

/** A change, whose sign says something by itself. */
const isChange = (key: string) => /^(d[A-Z]|delta|change|slope|difference)/.test(key);
/** The side of the published figure that a key names. */
const sideOf = (key: string) => /_(max|below|min|above)$/.exec(key)?.[1];

/** Finds what a direction is measured from: the start among the inputs (`pH0` for `pH`), or nought for a change. */
function settled(bound: Bound, key: string, published: unknown, inputs: Figures): Bound {
  if (bound.kind !== 'direction' || typeof published !== 'number' || sideOf(key)) return bound;
  const start = inputs[`${key}0`];
  if (typeof start === 'number') return { kind: 'direction', from: start };
  return isChange(key) || published < 0 ? { kind: 'direction', from: 0 } : { kind: 'exact' };
}

function line(key: string, published: unknown, ours: unknown, bound: Bound): Line {
  return {
    key,
    published,
    ours,
    difference: difference(published, ours),
    bound,
    within: holds(published, ours, bound, key),
  };
}

/** Whether our figure keeps the bound. Lists and nested figures are judged part by part. */
export function holds(published: unknown, ours: unknown, bound: Bound, key = ''): boolean {
  if (bound.kind === 'shown') return true;
  if (typeof published === 'number') return typeof ours === 'number' && keeps(published, ours, bound, key);
  if (typeof published === 'string')
    return typeof ours === 'string' && (wordsAgree(published, ours, bound) || datesAgree(published, ours, bound));
  if (published === null || typeof published === 'boolean') return ours === published;
  if (Array.isArray(published))
    return (
      Array.isArray(ours) &&
      ours.length === published.length &&
      published.every((part, at) => holds(part, ours[at], bound, key))
    );
  if (typeof published === 'object' && typeof ours === 'object' && ours !== null && !Array.isArray(ours))
    return Object.entries(published).every(([part, value]) => holds(value, (ours as Figures)[part], bound, part));
  return false;
}

function keeps(published: number, ours: number, bound: Bound, key: string): boolean {
  if (!Number.isFinite(ours)) return false;
  const slack = dust(published, ours);
  // A key that names a floor or a ceiling (`..._min`, `..._max`) is kept on the other side of it by any figure.
  const side = sideOf(key);
  const atLeast = side !== 'max' && side !== 'below';
  const atMost = side !== 'min' && side !== 'above';
  const between = (low: number, high: number) => (!atLeast || ours >= low - slack) && (!atMost || ours <= high + slack);
  switch (bound.kind) {
    case 'absolute':
      return between(published - bound.below, published + bound.above);
    case 'relative': {
      const size = Math.abs(published);
      return between(published - bound.below * size, published + bound.above * size);
    }
    case 'factor':
      return published !== 0 && ours / published >= bound.low - 1e-9 && ours / published <= bound.high + 1e-9;
    case 'inside':
      return between(bound.low, bound.high);
    case 'direction':
      if (sideOf(key) === 'max' || sideOf(key) === 'below') return ours <= published + slack;
      if (sideOf(key) !== undefined) return ours >= published - slack;
      return Math.sign(ours - (bound.from ?? 0)) === Math.sign(published - (bound.from ?? 0));
    default:
      return between(published, published);
  }
}

const plain = (words: string) =>
  words
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

function wordsAgree(published: string, ours: string, bound: Bound): boolean {
  const loose = bound.kind === 'text' || bound.kind === 'direction';
  return loose ? plain(published) === plain(ours) : published.trim() === ours.trim();
}

function datesAgree(published: string, ours: string, bound: Bound): boolean {
  if (bound.kind !== 'absolute' || !isoDate.test(published) || !isoDate.test(ours)) return false;
  const days = daysBetween(published, ours);
  return days >= -bound.below && days <= bound.above;
}

const daysBetween = (from: string, to: string) => Math.round((Date.parse(to) - Date.parse(from)) / 86_400_000);

function sameOrder(lines: readonly Line[]): boolean {
  const pairs = lines.filter((one) => typeof one.published === 'number' && typeof one.ours === 'number');
  return pairs.every((a) =>
    pairs.every((b) => (a.published as number) >= (b.published as number) || (a.ours as number) < (b.ours as number)),
  );
}

/** Ours less published in words a reader of the table can use. */
export function difference(published: unknown, ours: unknown): string {
  if (ours === undefined) return 'no figure';
  if (typeof published === 'number' && typeof ours === 'number') return numberDifference(published, ours);
  if (typeof published === 'string' && typeof ours === 'string' && isoDate.test(published) && isoDate.test(ours)) {
    const days = daysBetween(published, ours);
    return days === 0 ? '0' : `${days > 0 ? '+' : ''}${days} days`;
  }
  if (Array.isArray(published) && Array.isArray(ours) && published.length === ours.length)
    return merged(published.map((part, at) => difference(part, ours[at])));
  if (isFigures(published) && isFigures(ours))
    return merged(Object.keys(published).map((key) => difference(published[key], ours[key])));
  return published === ours ? 'same' : 'different';
}

const isFigures = (value: unknown): value is Figures =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const merged = (parts: readonly string[]) => (new Set(parts).size === 1 ? (parts[0] as string) : parts.join(', '));

function numberDifference(published: number, ours: number): string {
  const gap = ours - published;
  if (!Number.isFinite(gap)) return 'no number';
  if (Math.abs(gap) <= dust(published, ours)) return '0';
  const sign = gap > 0 ? '+' : '';
  const share = published === 0 ? '' : ` (${sign}${figure((100 * gap) / Math.abs(published), 2)} %)`;
  return `${sign}${figure(gap, 2)}${share}`;
}

/** A number as printed in the table: `digits` significant digits, no exponent for everyday sizes. */
export function figure(value: number, digits = 5): string {
  if (!Number.isFinite(value)) return String(value);
  const rounded = Number(value.toPrecision(digits));
  return String(Object.is(rounded, -0) ? 0 : rounded);
}

/** The bound in words, for the table. */
export function boundWords(bound: Bound): string {
  const both = (below: number, above: number, unit: string) =>
    below === above ? `±${figure(below)}${unit}` : `−${figure(below)}/+${figure(above)}${unit}`;
  switch (bound.kind) {
    case 'absolute':
      return bound.below === 0 && bound.above === 0 ? 'exact' : both(bound.below, bound.above, '');
    case 'relative':
      return both(bound.below * 100, bound.above * 100, ' %');
    case 'factor':
      return bound.low === 1 ? `1 to ${figure(bound.high)} times` : `within a factor of ${figure(bound.high, 3)}`;
    case 'inside':
      return `inside ${figure(bound.low)} to ${figure(bound.high)}`;
    case 'direction':
      return bound.from === undefined ? 'same direction' : `same direction from ${figure(bound.from)}`;
    case 'shown':
      return 'shown, not judged';
    default:
      return bound.kind;
  }
}
