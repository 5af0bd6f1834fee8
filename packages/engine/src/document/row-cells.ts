import type { MessageCode } from '@sorrel/almanac/words';
import type { Problem } from '../derivation/problem.ts';
import type { PlantRange } from '../plan/place.ts';
import type { Dimension } from '../units/dimension.ts';
import { parseQuantity } from '../units/parse.ts';
import { notAChoice } from './field-problems.ts';
import type { Report } from './fields.ts';
import type { Limit } from './limits.ts';
import { outside } from './measure.ts';
import { plantNamed } from './plant-named.ts';
import { problem } from './report.ts';

/** A table repeats its units and plants, so each different cell is read once; the caches stay small. */
const MOST_KEPT = 5000;

function kept<K, V>(cache: Map<K, V>, key: K, value: V): V {
  if (cache.size >= MOST_KEPT) cache.clear();
  cache.set(key, value);
  return value;
}

const PLAIN = /^[+-]?\d+(?:[.,]\d+)?$/;

const BLANK = 32;

/** A part of a cell without the spaces around it. */
function trimmed(cell: string, from: number, to: number): string {
  let start = from;
  let end = to;
  while (start < end && cell.charCodeAt(start) === BLANK) start++;
  while (end > start && cell.charCodeAt(end - 1) === BLANK) end--;
  return cell.slice(start, end).trim();
}

/** Reads the cells of one row at a time; problems are gathered for the row. */
export class RowCells {
  place = '';
  problems: Problem[] = [];
  private readonly quantities = new Map<Dimension, Map<string, number>>();
  private readonly ranges = new Map<string, PlantRange>();

  private readonly texts = new Map<string, string>();

  /** The same text that an earlier row held, so that what is remembered of it is found at once. */
  same(cell: string): string {
    return this.texts.get(cell) ?? kept(this.texts, cell, cell);
  }

  /** Starts a row. */
  start(place: string): void {
    this.place = place;
    if (this.problems.length > 0) this.problems = [];
  }

  fail(
    code: MessageCode,
    field: string,
    value: unknown,
    words: Readonly<Record<string, string | number>> = {},
  ): undefined {
    this.problems.push(problem(code, { place: this.place, field }, value, words));
    return undefined;
  }

  /** A plain number, with a decimal point or comma. */
  number(cell: string, field: string, example: string): number | undefined {
    const value = Number(cell);
    if (!Number.isNaN(value)) return value;
    if (PLAIN.test(cell)) return Number(cell.replace(',', '.'));
    return this.fail('document.not-a-number', field, cell, { found: `"${cell}"`, example });
  }

  ph(cell: string, field: string): number | undefined {
    const value = this.number(cell, field, '5.4');
    return value === undefined || (value >= 0 && value <= 14) ? value : this.fail('document.ph-range', field, cell);
  }

  /** A quantity in SI; a plain number is in the column's own unit, when it has one. */
  quantity(cell: string, field: string, dimension: Dimension, limit: Limit, unit?: number): number | undefined {
    const read = this.quantities.get(dimension) ?? kept(this.quantities, dimension, new Map<string, number>());
    const plain = unit === undefined ? Number.NaN : Number(cell);
    const known = Number.isNaN(plain) || unit === undefined ? read.get(cell) : plain * unit;
    if (known !== undefined) {
      const fault = outside(known, limit);
      if (fault === undefined) return known;
      return this.fail(fault, field, cell, { example: limit.example, high: limit.mostText });
    }
    if (unit !== undefined && PLAIN.test(cell))
      return this.quantity(cell.replace(',', '.'), field, dimension, limit, unit);
    const parsed = parseQuantity(cell, dimension, { field, place: this.place });
    if (!parsed.ok) {
      this.problems.push(...parsed.problems);
      return undefined;
    }
    kept(read, cell, parsed.value);
    return this.quantity(cell, field, dimension, limit, undefined);
  }

  /** One of a fixed set of words, in any case. */
  choice<T extends string>(cell: string, field: string, known: ReadonlyMap<string, T>): T | undefined {
    const found = known.get(cell) ?? known.get(cell.toLowerCase());
    if (found !== undefined) return found;
    this.problems.push(notAChoice({ place: this.place, field }, cell, [...known.keys()]));
    return undefined;
  }

  /** Plants between semicolons. */
  plants(cell: string, field: string): readonly PlantRange[] | undefined {
    const before = this.problems.length;
    const plants: PlantRange[] = [];
    for (let from = 0; from <= cell.length; ) {
      const semicolon = cell.indexOf(';', from);
      const end = semicolon < 0 ? cell.length : semicolon;
      const name = trimmed(cell, from, end);
      const plant = name === '' ? undefined : (this.ranges.get(name) ?? this.plant(name, field));
      if (plant !== undefined) plants.push(plant);
      from = end + 1;
    }
    return this.problems.length > before ? undefined : plants;
  }

  private plant(name: string, field: string): PlantRange | undefined {
    const report: Report = { place: this.place, problems: this.problems };
    const plant = plantNamed(name, [field], report);
    return plant === undefined ? undefined : kept(this.ranges, name, plant);
  }
}
