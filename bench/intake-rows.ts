import { recommend, type Settings } from '@sorrel/engine/plan';
import { type Proposal, propose, rowsSetup } from '@sorrel/intake';
import { cutter, eachRecord, mappedReader, type Run } from '@sorrel/intake/rows';
import { inferSchema, initParser } from 'udsv';
import { csvLine, planRow } from '../apps/cli/src/plan-row.ts';
import { inTurns, type Pair } from './measure.ts';

/** A file is read in pieces of so many letters. */
const PIECE = 65_536;
const today = '2026-11-01';
const settings: Settings = { today, overshootChance: 0.05, hemisphere: 'north', finenessSystem: 'OH' };

export interface IntakeTimes {
  /** Rows to places and reasons, against the bare parse. */
  readonly reading: Pair;
  /** Rows to finished rows of the plan, against the bare parse. */
  readonly planning: Pair;
  readonly rows: number;
  readonly planned: number;
}

const bare = (text: string): number => initParser(inferSchema(text, { trim: false })).stringArrs(text).length;

async function proposed(text: string): Promise<Proposal> {
  const found = await propose(new TextEncoder().encode(text), 'bench', {});
  if (!found.ok || found.proposal.questions.length > 0) throw new Error('the file of the bench asks something');
  return found.proposal;
}

/** Reads every row of a sender's file, and plans it when asked to. */
function take(text: string, proposal: Proposal, plan: boolean): { rows: number; planned: number; letters: number } {
  const setup = rowsSetup(proposal);
  const reader = mappedReader(setup, { today });
  let [rows, planned, letters] = [0, 0, 0];
  const cut = cutter(setup.delimiter);
  const each = (runs: readonly Run[]) => {
    for (const run of runs)
      eachRecord(run, setup.delimiter, (record) => {
        const row = reader.read(record);
        if (row === undefined) return;
        rows += 1;
        if (row.state === 'attention') return;
        planned += 1;
        if (plan) letters += csvLine(planRow(row.line, row.place, recommend(row.place, [], settings), 'metric')).length;
      });
  };
  for (let at = 0; at < text.length; at += PIECE) each(cut.push(text.slice(at, at + PIECE)));
  each(cut.end());
  return { rows, planned, letters };
}

/** Times the intake on one thread against the bare parse of the same text, both warm. */
export async function intakeTimes(text: string, rounds = 5): Promise<IntakeTimes> {
  const proposal = await proposed(text);
  const reading = await inTurns(
    () => take(text, proposal, false),
    () => bare(text),
    rounds,
  );
  const planning = await inTurns(
    () => take(text, proposal, true),
    () => bare(text),
    Math.min(rounds, 3),
  );
  const { rows, planned } = take(text, proposal, false);
  return { reading, planning, rows, planned };
}
