import { type SulfurRateRow, sulfurRates } from '@sorrel/almanac/sulfur-rates';
import type { Ph } from '../../units/si.ts';
import type { RateUnit } from './rate.ts';

/** One column of a published table, as a curve of sulfur against pH. */
export interface RateColumn {
  readonly texture: string;
  readonly classes: readonly string[];
  readonly unit: RateUnit;
  /** Treated depth as printed, cm. */
  readonly depthCm: number | undefined;
  readonly rows: readonly SulfurRateRow[];
  /** pH of the printed rows with the sulfur above the lowest of them; empty for a rate per unit. */
  readonly nodes: readonly { readonly ph: Ph; readonly low: number; readonly high: number }[];
}

const tables = new Map<string, readonly RateColumn[]>();

/**
 * The columns of a publication's sulfur table, empty when the almanac has none.
 *
 * @param publication its citation key, or that of another copy of the same table
 */
export function rateTable(publication: string): readonly RateColumn[] {
  const known = tables.get(publication);
  if (known !== undefined) return known;
  const mine = sulfurRates.filter((row) => row.publication === publication);
  const rows = mine.length > 0 ? mine : sulfurRates.filter((row) => row.sources.includes(publication));
  const columns = [...new Set(rows.map((row) => row.texture))].map((texture) =>
    columnOf(rows.filter((row) => row.texture === texture)),
  );
  tables.set(publication, columns);
  return columns;
}

/** The column with that heading, else the one that stands for that texture class; the only column when none is named. */
export function columnFor(columns: readonly RateColumn[], texture: string | undefined): RateColumn | undefined {
  if (texture === undefined) return columns.length === 1 ? columns[0] : undefined;
  return (
    columns.find((column) => column.texture === texture) ?? columns.find((column) => column.classes.includes(texture))
  );
}

export interface PrintedAmount {
  readonly low: number;
  readonly high: number;
  /** False when it was read off between two printed figures. */
  readonly printed: boolean;
}

/**
 * Sulfur from one pH to another in the column's own unit. Between printed rows the figure is read off a straight
 * line; from 7 to 5 the printed steps 7 to 6 and 6 to 5 add up.
 *
 * @returns `undefined` where the table does not reach
 */
export function amountFrom(column: RateColumn, from: Ph, to: Ph): PrintedAmount | undefined {
  if (to >= from) return { low: 0, high: 0, printed: false };
  const first = column.rows[0] as SulfurRateRow;
  if (first.rule === 'per unit') {
    const share = (from - to) / (first.phFrom - first.phTo);
    return { low: first.rateLow * share, high: first.rateHigh * share, printed: true };
  }
  for (const row of column.rows)
    if (near(row.phFrom, from) && near(row.phTo, to)) return { low: row.rateLow, high: row.rateHigh, printed: true };
  const top = readOff(column, from);
  const bottom = readOff(column, to);
  if (top === undefined || bottom === undefined) return undefined;
  return { low: top.low - bottom.low, high: top.high - bottom.high, printed: false };
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9;

function columnOf(rows: readonly SulfurRateRow[]): RateColumn {
  const { texture, classes, unit, depthCm, rule } = rows[0] as SulfurRateRow;
  return { texture, classes, unit, depthCm, rows, nodes: rule === 'cell' ? nodesOf(rows) : [] };
}

/** Lays the cells end to end: each pH gets the sulfur that leads from it down to the lowest pH of the column. */
function nodesOf(rows: readonly SulfurRateRow[]): { ph: Ph; low: number; high: number }[] {
  const phs = [...new Set(rows.flatMap((row) => [row.phFrom, row.phTo]))].sort((a, b) => a - b);
  const placed = new Map<Ph, { low: number; high: number }>([[phs[0] as Ph, { low: 0, high: 0 }]]);
  for (let grown = true; grown; ) {
    grown = false;
    for (const { phFrom, phTo, rateLow, rateHigh } of rows) {
      const top = placed.get(phFrom);
      const bottom = placed.get(phTo);
      if (bottom !== undefined && top === undefined)
        placed.set(phFrom, { low: bottom.low + rateLow, high: bottom.high + rateHigh });
      else if (top !== undefined && bottom === undefined)
        placed.set(phTo, { low: top.low - rateLow, high: top.high - rateHigh });
      else continue;
      grown = true;
    }
  }
  return [...placed].map(([ph, amount]) => ({ ph, ...amount })).sort((a, b) => a.ph - b.ph);
}

function readOff({ nodes }: RateColumn, ph: Ph): { low: number; high: number } | undefined {
  for (let i = 1; i < nodes.length; i++) {
    const [below, above] = [nodes[i - 1], nodes[i]];
    if (below === undefined || above === undefined || ph < below.ph - 1e-9 || ph > above.ph + 1e-9) continue;
    const share = (ph - below.ph) / (above.ph - below.ph);
    return {
      low: below.low + share * (above.low - below.low),
      high: below.high + share * (above.high - below.high),
    };
  }
  return undefined;
}
