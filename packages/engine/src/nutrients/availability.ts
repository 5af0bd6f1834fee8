import { type AvailabilityRow, availability } from '@sorrel/almanac/availability';
import type { Basis, Recorder } from '../derivation/derivation.ts';
import type { Medium } from '../soil/soil.ts';
import type { Ph } from '../units/si.ts';
import type { Danger, Nutrient } from './nutrient.ts';

/** `revised` follows newer work and is the default in soil; `classic` is the old band chart; `organic` is for peat and bark. */
export type Series = 'classic' | 'revised' | 'organic';
export type UsableWord = 'good' | 'fair' | 'poor';
export type DangerWord = 'none' | 'some' | 'high';

/** Ends of the tables; beyond them the value of the end stands and `beyond` says so. */
export const TABLE_PH = { low: 4, high: 9, step: 0.5 } as const;
/** Least share that is called good, and fair; own rule, coarser than the uncertainty of the tables on purpose. */
const GOOD = 0.75;
const FAIR = 0.5;
/** Least risk that is called some, and high; own rule. */
const SOME = 0.15;
const HIGH = 0.6;

export interface Usability {
  readonly nutrient: Nutrient;
  readonly series: Series;
  readonly ph: Ph;
  /** 0 to 1 of the best of this nutrient's own line. For drawing and comparing; shown as a word, never as a percentage. */
  readonly relative: number;
  /** The band of the table's own uncertainty, inside 0 to 1. */
  readonly low: number;
  readonly high: number;
  readonly word: UsableWord;
  /** The pH lies outside the table. */
  readonly beyond: boolean;
  readonly sources: readonly string[];
  readonly basis: Basis;
}

export interface DangerLevel {
  readonly danger: Danger;
  readonly ph: Ph;
  readonly relative: number;
  readonly word: DangerWord;
  readonly beyond: boolean;
  readonly sources: readonly string[];
  readonly basis: Basis;
}

/** The word for a share of a nutrient's best, and for a risk; own rule. */
export const usableWord = (share: number): UsableWord => (share >= GOOD ? 'good' : share >= FAIR ? 'fair' : 'poor');
export const dangerWord = (risk: number): DangerWord => (risk >= HIGH ? 'high' : risk >= SOME ? 'some' : 'none');

const rows = new Map<string, AvailabilityRow>();
for (const row of availability) rows.set(`${row.subject} ${row.series} ${row.medium}`, row);

/** The line a medium is read on when nobody chose: peat, bark and organic soil lie about one unit to the sour side. */
export const seriesFor = (medium: Medium): Series =>
  medium === 'organic' || medium === 'soilless' ? 'organic' : 'revised';

const mediumOf = (medium: Medium): 'organic' | 'mineral' => (seriesFor(medium) === 'organic' ? 'organic' : 'mineral');

/** The table row, for its sources and uncertainty. */
export function availabilityRow(
  subject: string,
  series: Series | 'risk',
  medium: 'organic' | 'mineral',
): AvailabilityRow {
  const row = rows.get(`${subject} ${series} ${medium}`);
  if (row === undefined)
    throw new RangeError(`The availability table has no line for ${subject}, ${series}, ${medium}`);
  return row;
}

function along(row: AvailabilityRow, ph: Ph): number {
  if (!(ph >= 0 && ph <= 14)) throw new RangeError(`pH must lie between 0 and 14, got ${ph}`);
  const at = (Math.min(Math.max(ph, TABLE_PH.low), TABLE_PH.high) - TABLE_PH.low) / TABLE_PH.step;
  const index = Math.min(Math.floor(at), row.values.length - 2);
  const [from, to] = [row.values[index] ?? 0, row.values[index + 1] ?? 0];
  return from + (to - from) * (at - index);
}

const outside = (ph: Ph): boolean => ph < TABLE_PH.low || ph > TABLE_PH.high;

/**
 * How usable a nutrient is at a pH, straight between the half units of the table.
 *
 * @param ph in water for soil, of the extract for mixes; 0 to 14
 * @param series the line to read; the medium's own when left out
 * @throws RangeError outside 0 to 14, or for a series the medium has no line in
 * @source direction: barrow-hartemink-2023, cimmyt-availability; size: own-scoring (judgement); classic: truog-1946 (memory)
 */
export function usability(
  nutrient: Nutrient,
  ph: Ph,
  medium: Medium,
  series: Series = seriesFor(medium),
  recorder?: Recorder,
): Usability {
  const row = availabilityRow(nutrient, series, series === 'organic' ? 'organic' : 'mineral');
  const relative = along(row, ph);
  const word = usableWord(relative);
  if (recorder)
    recorder.step({
      symbol: `a(${nutrient})`,
      title: `How usable ${nutrient} is at this pH`,
      formula: 'straight between the half units of the table; good from 0.75, fair from 0.5',
      terms: [
        { symbol: 'pH', value: ph, unit: 'pH', origin: 'entered' },
        { symbol: 'series', value: series, unit: '', origin: 'choice' },
      ],
      value: word,
      unit: '',
      sources: row.sources,
      basis: row.basis,
      note: `The size is rough (give or take ${row.uncertainty} of 1), so only a word is said.`,
    });
  return {
    nutrient,
    series,
    ph,
    relative,
    low: Math.max(0, relative - row.uncertainty),
    high: Math.min(1, relative + row.uncertainty),
    word,
    beyond: outside(ph),
    sources: row.sources,
    basis: row.basis,
  };
}

/**
 * How great the danger of aluminium, manganese or sodium is at a pH.
 *
 * @throws RangeError outside 0 to 14
 * @source onset: njaes-ph (aluminium below 5), uky-mn (manganese in the low fives), turf-ph-words (sodium above 8.5); size: own-scoring (judgement)
 */
export function dangerAt(danger: Danger, ph: Ph, medium: Medium): DangerLevel {
  const row = availabilityRow(danger, 'risk', mediumOf(medium));
  const relative = along(row, ph);
  const word = dangerWord(relative);
  return { danger, ph, relative, word, beyond: outside(ph), sources: row.sources, basis: row.basis };
}
