import type { Problem } from '@sorrel/engine/document';
import type { Product } from '@sorrel/engine/materials';
import { recommend, type Settings } from '@sorrel/engine/plan';
import type { UnitSystem } from '@sorrel/engine/units';
import {
  eachRecord,
  mappedReader,
  mendLine,
  type Note,
  type RowsSetup,
  type Run,
  type TableRecord,
} from '@sorrel/intake/rows';
import { csvLine, planRow } from '../plan-row.ts';
import { rowBytes } from '../table/row-bytes.ts';

/** What all rows of a sender's file share. Plain data, so that it can be sent to another thread. */
export interface IntakeSetup {
  readonly rows: RowsSetup;
  readonly today: string;
  readonly region?: string;
  readonly settings: Settings;
  readonly products: readonly Product[];
  readonly system: UnitSystem;
  /** Lines of JSON instead of CSV. */
  readonly json: boolean;
}

/** What became of some rows, ready to be written. Plain data. */
export interface TakenIn {
  /** Rows of the plan, in UTF-8. */
  readonly plans: Uint8Array<ArrayBuffer>;
  /** Rows of the list to mend, in UTF-8. */
  readonly mend: Uint8Array<ArrayBuffer>;
  readonly planned: number;
  readonly attention: number;
  /** The first rows to mend, to be shown. */
  readonly shown: readonly { readonly line: number; readonly problems: readonly Problem[] }[];
  /** How many cells of each column were read and not used as figures. */
  readonly notes: readonly (Omit<Note, 'cell'> & { readonly count: number })[];
}

/** Rows to mend of one batch that are handed on to be shown. */
const MOST_SHOWN = 20;
/** A batch of rows is rarely longer. */
const USUAL_BYTES = 1 << 19;

/** Turns rows of a sender's file into rows of plans and rows to mend; each row into exactly one of them. */
export function intakePlanner(setup: IntakeSetup): (runs: readonly Run[]) => TakenIn {
  const { today, region, settings, products, system, json } = setup;
  const reader = mappedReader(setup.rows, { today, ...(region === undefined ? {} : { region }) });
  const { delimiter } = setup.rows;
  const plans = rowBytes(USUAL_BYTES);
  const mend = rowBytes(1 << 14);
  return (runs) => {
    let [planned, attention] = [0, 0];
    const shown: { line: number; problems: readonly Problem[] }[] = [];
    const notes = new Map<string, { title: string; kind: Note['kind']; count: number }>();
    const take = (record: TableRecord): void => {
      const row = reader.read(record);
      if (row === undefined) return;
      if (row.state === 'attention') {
        attention += 1;
        mend.add(mendLine(row));
        if (shown.length < MOST_SHOWN) shown.push({ line: row.line, problems: row.problems });
        return;
      }
      planned += 1;
      const plan = planRow(row.line, row.place, recommend(row.place, products, settings), system);
      plans.add(json ? `${JSON.stringify(plan)}\n` : `${csvLine(plan)}\r\n`);
      for (const { title, kind } of row.notes ?? []) {
        const key = `${kind} ${title}`;
        const known = notes.get(key);
        if (known === undefined) notes.set(key, { title, kind, count: 1 });
        else known.count += 1;
      }
    };
    for (const run of runs) eachRecord(run, delimiter, take);
    return { plans: plans.take(), mend: mend.take(), planned, attention, shown, notes: [...notes.values()] };
  };
}
