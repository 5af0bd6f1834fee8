import { type Problem, rowReader } from '@sorrel/engine/document';
import type { Product } from '@sorrel/engine/materials';
import { recommend, type Settings } from '@sorrel/engine/plan';
import type { UnitSystem } from '@sorrel/engine/units';
import { eachRecord, type Run, type TableRecord } from '@sorrel/intake/rows';
import { csvLine, planRow } from '../plan-row.ts';
import { rowBytes } from './row-bytes.ts';

/** What all rows of a table share. Plain data, so that it can be sent to another thread. */
export interface TableSetup {
  readonly header: readonly string[];
  readonly today: string;
  readonly region?: string;
  readonly settings: Settings;
  readonly products: readonly Product[];
  readonly system: UnitSystem;
  /** Lines of JSON instead of CSV. */
  readonly json: boolean;
}

export interface BadRow {
  readonly line: number;
  readonly problems: readonly Problem[];
}

export interface PlannedRows {
  /** Rows of the plan in UTF-8, ready to be written. */
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly bad: readonly BadRow[];
}

export interface Planner {
  /** Columns nobody knows. */
  readonly problems: readonly Problem[];
  /** Plans some rows, in order; `first` is the number of the first of them, counted from 1. */
  plan(runs: readonly Run[], first: number): PlannedRows;
}

/** What stands between the cells of a table with our own columns (RFC 4180). */
export const DELIMITER = ',';
/** A batch of rows of plans is rarely longer. */
const USUAL_BYTES = 1 << 19;

/** Turns rows of soil tests into rows of plans. */
export function createPlanner(setup: TableSetup): Planner {
  const { header, today, region, settings, products, system, json } = setup;
  const reader = rowReader(header, { today, ...(region === undefined ? {} : { region }) });
  const text = rowBytes(USUAL_BYTES);
  return {
    problems: reader.problems,
    plan(runs, first) {
      let row = first;
      const bad: BadRow[] = [];
      const take = ({ cells, line }: TableRecord) => {
        const read = reader.read(cells, row);
        row += 1;
        if (!read.ok) {
          bad.push({ line, problems: read.problems });
          return;
        }
        const planned = planRow(line, read.place, recommend(read.place, products, settings), system);
        text.add(json ? `${JSON.stringify(planned)}\n` : `${csvLine(planned)}\r\n`);
      };
      for (const run of runs) eachRecord(run, DELIMITER, take);
      return { bytes: text.take(), bad };
    },
  };
}
