import { conversion } from '@sorrel/almanac/conversions';
import { type NutrientLevelRow, nutrientLevels } from '@sorrel/almanac/nutrient-levels';
import type { Basis, Recorder } from '../derivation/derivation.ts';
import type { Extractant } from '../evidence/soil-test.ts';
import { isMediaExtract } from './media-extract.ts';

export type LevelMeaning = NutrientLevelRow['meaning'];
/** Extractants of the table; the index is worked out from a Mehlich-3 figure and the pH. */
export type LevelTable = NutrientLevelRow['extractant'];

export interface LevelClass {
  /** The publication's own word. */
  readonly class: string;
  readonly meaning: LevelMeaning;
  /** The figure in the unit of the publication. */
  readonly value: number;
  readonly unit: string;
  /** Citation key of the standard the class is from. */
  readonly standard: string;
  readonly sources: readonly string[];
  readonly basis: Basis;
  readonly note?: string;
  /** Other standards for the same extractant that say something else. */
  readonly others: readonly { readonly standard: string; readonly class: string; readonly meaning: LevelMeaning }[];
}

const standards = new Map<string, Map<string, NutrientLevelRow[]>>();
for (const row of nutrientLevels) {
  const key = `${row.nutrient} ${row.extractant}`;
  const byStandard = standards.get(key) ?? new Map<string, NutrientLevelRow[]>();
  standards.set(key, byStandard);
  const standard = row.sources[0] ?? '';
  const rows = byStandard.get(standard);
  if (rows === undefined) byStandard.set(standard, [row]);
  else rows.push(row);
}

/** Standards that have classes for a nutrient by an extractant, the one used when nobody chose first. */
export const standardsFor = (nutrient: string, table: LevelTable): readonly string[] => [
  ...(standards.get(`${nutrient} ${table}`)?.keys() ?? []),
];

/** Extractants the table has classes of a nutrient for. */
export const extractantsFor = (nutrient: string): readonly LevelTable[] => [
  ...new Set(nutrientLevels.filter((row) => row.nutrient === nutrient).map((row) => row.extractant)),
];

/**
 * The figure of a level as a publication prints it: soil kg/kg as mg/kg or lb/acre (2,000,000 lb of soil, osu-circ587),
 * extracts kg/m³ as mg/L.
 */
export function printedLevel(value: number, extractant: Extractant, unit: string): number {
  if (isMediaExtract(extractant)) return clean(value * 1000);
  const ppm = clean(value * 1e6);
  return unit === 'lb/acre' ? clean(ppm * conversion('mg/kg', 'lb/acre (6 2/3 in, 2e6 lb soil)')) : ppm;
}

/** Takes off the dust binary fractions leave, so that a figure on a limit stays on it. */
const clean = (value: number): number => Number(value.toPrecision(12));

/**
 * Class of a figure in the published unit. Each class holds its lower bound. Tables that print whole numbers leave
 * gaps (24, then 25): there the figure is first rounded to a whole number, half up.
 *
 * @param value in the unit of the table, 0 or more (an index may be negative)
 * @param standard citation key; the first of the table when left out
 * @returns undefined when no table has the nutrient by that extractant
 * @throws RangeError when the value is not a number
 * @source nutrient-levels of the almanac
 */
export function classOf(
  nutrient: string,
  table: LevelTable,
  value: number,
  standard?: string,
  recorder?: Recorder,
): LevelClass | undefined {
  if (!Number.isFinite(value)) throw new RangeError(`a level must be a number, got ${value}`);
  const known = standards.get(`${nutrient} ${table}`);
  const first = standard ?? known?.keys().next().value;
  const rows = first === undefined ? undefined : known?.get(first);
  if (known === undefined || first === undefined || rows === undefined) return undefined;
  const row = rowFor(rows, value);
  if (row === undefined) return undefined;
  const others: { standard: string; class: string; meaning: LevelMeaning }[] = [];
  for (const [name, list] of known) {
    const other = name === first ? undefined : rowFor(list, value);
    if (other !== undefined && other.meaning !== row.meaning)
      others.push({ standard: name, class: other.class, meaning: other.meaning });
  }
  if (recorder)
    recorder.step({
      symbol: 'class',
      title: `Class of ${nutrient} by ${table}`,
      formula: 'the class whose lower bound the figure reaches last',
      terms: [
        { symbol: 'level', value, unit: row.unit, origin: 'entered' },
        { symbol: 'from', value: row.low ?? 'no limit', unit: row.unit, origin: 'table', source: first },
      ],
      value: row.class,
      unit: '',
      sources: row.sources,
      basis: row.basis,
    });
  return {
    class: row.class,
    meaning: row.meaning,
    value,
    unit: row.unit,
    standard: first,
    sources: row.sources,
    basis: row.basis,
    ...(row.note === undefined ? {} : { note: row.note }),
    others,
  };
}

function rowFor(rows: readonly NutrientLevelRow[], value: number): NutrientLevelRow | undefined {
  const gaps = rows.some((row, index) => {
    const next = rows[index + 1];
    return row.high !== undefined && next?.low !== undefined && next.low > row.high;
  });
  const read = gaps ? Math.floor(value + 0.5) : value;
  let found: NutrientLevelRow | undefined;
  for (const row of rows) if (row.low === undefined || read >= row.low) found = row;
  return found;
}
