import { rowReader } from '@sorrel/engine/document';
import { recommend, type Settings } from '@sorrel/engine/plan';
import { eachRecord } from '@sorrel/intake/rows';
import { parse as csvParse } from 'csv-parse/sync';
import papaparse from 'papaparse';
import { inferSchema, initParser } from 'udsv';
import { csvLine, planRow } from '../apps/cli/src/plan-row.ts';
import { inTurns, median, type Pair, timed } from './measure.ts';

const today = '2026-11-01';
const settings: Settings = { today, overshootChance: 0.05, hemisphere: 'north', finenessSystem: 'OH' };

/** Bare parses of the same text to rows of cells, by the package that does it. */
export const parsers: Readonly<Record<string, (text: string) => number>> = {
  udsv: (text) => initParser(inferSchema(text, { trim: false })).stringArrs(text).length,
  papaparse: (text) => papaparse.parse(text, { skipEmptyLines: true }).data.length - 1,
  'csv-parse': (text) => csvParse(text).length - 1,
};

export interface Counts {
  readonly rows: number;
  readonly planned: number;
  readonly dosed: number;
  /** Letters of the finished table. */
  readonly written: number;
}

/** The whole main job for every row of a table, without a forecast: reader, place, recommendation, row of the plan. */
export function recommendAll(text: string): Counts {
  let reader: ReturnType<typeof rowReader> | undefined;
  let [rows, planned, dosed, written] = [0, 0, 0, 0];
  eachRecord({ text, line: 1, records: Number.NaN }, ',', ({ cells, line }) => {
    if (reader === undefined) {
      reader = rowReader(cells, { today });
      return;
    }
    rows++;
    const read = reader.read(cells, rows);
    if (!read.ok) return;
    planned++;
    const recommendation = recommend(read.place, [], settings);
    if (recommendation.applications.length > 0) dosed++;
    written += csvLine(planRow(line, read.place, recommendation, 'metric')).length;
  });
  return { rows, planned, dosed, written };
}

export interface Throughput {
  readonly parsers: readonly { readonly name: string; readonly ms: number }[];
  readonly fastest: string;
  readonly pair: Pair;
  readonly counts: Counts;
}

/** Times the whole job against the fastest bare parse of the same text, in turns. */
export async function throughput(text: string, rounds = 5): Promise<Throughput> {
  const times: { name: string; ms: number }[] = [];
  for (const [name, parse] of Object.entries(parsers)) {
    parse(text);
    const all: number[] = [];
    for (let round = 0; round < rounds; round++) all.push(await timed(() => parse(text)));
    times.push({ name, ms: median(all) });
  }
  times.sort((a, b) => a.ms - b.ms);
  const fastest = times[0]?.name ?? '';
  const bare = parsers[fastest];
  if (bare === undefined) throw new RangeError('no parser');
  const pair = await inTurns(
    () => recommendAll(text),
    () => bare(text),
    rounds,
  );
  return { parsers: times, fastest, pair, counts: recommendAll(text) };
}
