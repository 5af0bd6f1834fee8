import type { Evidence } from './evidence.ts';
import { shareInside } from './evidence.ts';
import { isFigure, isUsed, meaningRow, NOT_USED, needsUnit } from './meanings.ts';
import { readTitle, type TitleReading } from './title.ts';
import { factorOf, unitFor, unitsFor } from './units.ts';

/** Why a column is taken for what it is; a code of the words catalogue without its room. */
export type Reason =
  | 'remembered'
  | 'answered'
  | 'name'
  | 'name-near'
  | 'name-range'
  | 'unknown'
  | 'same-again'
  | 'not-needed'
  | 'not-figures'
  | 'not-days'
  | 'words-unknown'
  | 'by-volume'
  | 'share-of-cec'
  | 'empty'
  | 'unit-unknown';

/** What a column seems to be. */
export interface Guess {
  readonly means: string;
  readonly unit?: string;
  /** The sort of pH, when its name tells: a method, or `water` without a ratio. */
  readonly method?: string;
  readonly buffer?: string;
  readonly oxide?: string;
  /** 0 to 1. Below 0.6 the column is asked about. */
  readonly confidence: number;
  readonly reason: Reason;
  /** Unit written in the title that is none of the known ones. */
  readonly strangeUnit?: string;
}

const unused = (reason: Reason, confidence = 1): Guess => ({ means: NOT_USED, confidence, reason });

/** Whether the words of a column's cells can be used as its meaning asks, e.g. names of textures. */
export type CanRead = (meaning: string, cell: string) => boolean;

/**
 * Says what one column seems to mean: by its name, then by whether its cells are what such a column holds.
 *
 * @param parts what stands over it
 * @param canRead asks the engine whether it understands a word
 */
export function recognise(parts: readonly string[], evidence: Evidence, canRead: CanRead): Guess {
  const title = readTitle(parts);
  if (title === undefined) return unused('unknown', 0);
  const { name } = title;
  const whole = parts.join(' ');
  const means = name.meaning === 'lead' && EXTRACTED.test(whole) ? 'extractable-lead' : name.meaning;
  const row = meaningRow(means);
  if (row === undefined) return unused('unknown', 0);
  if (!isUsed(means) && means !== 'laboratory-number') return { means, confidence: 1, reason: 'not-needed' };
  if (evidence.samples.length === 0) return { ...base(title, means), confidence: 0.6, reason: 'empty' };
  const fault = unlike(means, evidence, canRead);
  if (fault !== undefined) return unused(fault, 0.7);
  const found = base(title, means);
  if (!needsUnit(means)) {
    const factor = row.quantity === 'lime-index' ? 0.1 : 1;
    const low = row.quantity === 'lime-index' ? (row.low ?? 0) * factor : row.low;
    const high = row.quantity === 'lime-index' ? (row.high ?? 0) * factor : row.high;
    if (isFigure(means) && shareInside(evidence.figures, factor, low, high) < 0.5)
      return { ...found, confidence: 0.4, reason: 'name-range' };
    return found;
  }
  return withUnit(found, title, evidence);
}

/** Lead drawn out with an extractant is less than there is. */
const EXTRACTED = /mehlich|dtpa|extract|available|morgan|\bm3\b/i;

function base({ name, method, buffer, how }: TitleReading, means: string): Guess {
  const told = means === 'ph' ? (method ?? name.method) : undefined;
  const kind = means === 'buffer-ph' ? (buffer ?? name.method) : undefined;
  return {
    means,
    ...(told === undefined ? {} : { method: told }),
    ...(kind === undefined ? {} : { buffer: kind }),
    ...(name.oxide === '' ? {} : { oxide: name.oxide }),
    confidence: how === 'exact' ? 1 : how === 'nearly' ? 0.5 : 0.9,
    reason: how === 'nearly' ? 'name-near' : 'name',
  };
}

/** Why the cells cannot be what the name says; `undefined` when they can. */
function unlike(means: string, evidence: Evidence, canRead: CanRead): Reason | undefined {
  const quantity = meaningRow(means)?.quantity;
  if (isFigure(means)) return evidence.numeric < 0.5 ? 'not-figures' : undefined;
  if (quantity === 'date') {
    const { possible } = evidence.dates;
    const readable = possible.length > 0 || evidence.samples.some((cell) => /\d/.test(cell));
    return readable ? undefined : 'not-days';
  }
  if (quantity !== 'word' && quantity !== 'plants') return undefined;
  const understood = evidence.samples.filter((cell) => canRead(means, cell)).length;
  return understood < evidence.samples.length / 2 ? 'words-unknown' : undefined;
}

function withUnit(found: Guess, title: TitleReading, evidence: Evidence): Guess {
  const row = meaningRow(found.means);
  if (row === undefined) return found;
  const written = title.unit;
  if (written === '%' && row.quantity === 'nutrient' && row.element !== '')
    return { means: 'cation-share', confidence: 0.9, reason: 'share-of-cec' };
  if (written === '%' && row.quantity === 'charge')
    return { means: 'cation-share', confidence: 0.9, reason: 'share-of-cec' };
  const unit = written === undefined ? undefined : unitFor(written, row);
  if (unit?.by_volume) return { means: NOT_USED, unit: unit.unit, confidence: 0.9, reason: 'by-volume' };
  if (unit !== undefined) {
    const factor = factorOf(unit, row, found.oxide);
    const inside = shareInside(evidence.figures, factor, row.low, row.high);
    return { ...found, unit: unit.unit, ...(inside < 0.5 ? { confidence: 0.4, reason: 'name-range' } : {}) };
  }
  if (written !== undefined) return { ...found, strangeUnit: written };
  if (evidence.withUnit > 0.8) return { ...found, unit: IN_CELLS };
  // A base saturation is a percentage by its nature.
  if (found.means === 'base-saturation') return { ...found, unit: '%' };
  return found;
}

/** Said of a column whose cells each carry their unit. */
export const IN_CELLS = 'in the cells';

/** The only unit in which the figures of a column would be likely; `undefined` when none or several are. */
export function likelyUnit(means: string, evidence: Evidence, oxide?: string): string | undefined {
  const row = meaningRow(means);
  if (row === undefined || evidence.figures.length === 0) return undefined;
  const fits = unitsFor(row).filter(
    (unit) => !unit.by_volume && shareInside(evidence.figures, factorOf(unit, row, oxide), row.low, row.high) > 0.95,
  );
  return fits.length === 1 ? fits[0]?.unit : undefined;
}
