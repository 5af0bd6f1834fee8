import { recommend, type Settings } from '@sorrel/engine/plan';
import {
  answer,
  mendHeader,
  mendLine,
  type Proposal,
  propose,
  type RowOutcome,
  readRows,
  splitter,
} from '../src/index.ts';
import { chance, encoded, grammarOf, headText, rowText } from './mutate.ts';

const today = '2026-11-01';
const settings: Settings = { today, overshootChance: 0.05, hemisphere: 'north', finenessSystem: 'OH' };

export interface Accounted {
  /** Records of the file that hold anything and stand under the header. */
  readonly rows: number;
  readonly planned: number;
  readonly attention: number;
  /** Set when there was no table to be found. */
  readonly refused?: true;
}

/** Answers every question in some way: fuzzing asks for no sense, only for an account of every row. */
function anyAnswers(proposal: Proposal, next: () => number): Proposal {
  let now = proposal;
  for (let round = 0; round < 60; round++) {
    const [question] = now.questions;
    if (question === undefined) return now;
    const free = question.wants === 'length' ? '6 in' : question.wants === 'ph' ? '6.5' : '100';
    const value = question.choices[Math.floor(next() * question.choices.length)]?.value ?? free;
    const answered = answer(now, question.id, value);
    if (!answered.ok) throw new Error(`${question.id} refuses its own answer ${value}`);
    now = answered.proposal;
  }
  throw new Error('the questions never end');
}

/**
 * Makes one table from a seed, reads it the whole way to plans, and checks that each of its rows came out exactly once:
 * planned, or in the list to mend, with a reason. Throws when one did not, or when anything crashes.
 *
 * @param plan whether each ready row is planned too
 */
export async function account(seed: number, rows: number, plan = true): Promise<Accounted> {
  const next = chance(seed);
  const grammar = grammarOf(next);
  const lines = headText(grammar, next);
  for (let row = 0; row < rows; row++) lines.push(rowText(grammar, next));
  const text = lines.join(grammar.lineEnd) + (next() < 0.5 ? grammar.lineEnd : '');
  const bytes = encoded(text, grammar.encoding);
  const proposed = await propose(bytes, `seed-${seed}`);
  if (!proposed.ok) return { rows: 0, planned: 0, attention: 0, refused: true };
  const proposal = anyAnswers(proposed.proposal, next);
  const expected = rowsOf(bytes, proposal);
  const seen: number[] = [];
  let [planned, attention] = [0, 0];
  const list: string[] = [];
  for await (const outcome of readRows(bytes, proposal, { today })) {
    seen.push(outcome.line);
    if (outcome.state === 'ready') {
      planned += 1;
      if (plan && recommend(outcome.place, [], settings).decision === undefined)
        throw new Error(`${outcome.line}: no decision`);
    } else {
      attention += 1;
      list.push(explained(outcome));
    }
  }
  if (seen.length !== expected.length || seen.some((line, at) => line !== expected[at]))
    throw new Error(`seed ${seed}: ${expected.length} rows, ${seen.length} outcomes`);
  writtenWhole(list, proposal, seed);
  return { rows: expected.length, planned, attention };
}

/** Lines of all rows that hold anything, counted by another road than the reader's own: the text as a whole. */
function rowsOf(bytes: Uint8Array, { form, header }: Proposal): number[] {
  if (form.kind !== 'text') throw new Error('text was made');
  const text =
    form.encoding === 'windows-1252'
      ? Buffer.from(bytes).toString('latin1')
      : new TextDecoder(form.encoding).decode(bytes);
  const split = splitter(form.delimiter);
  const fed = form.lineEnd === 'return' ? text.replaceAll('\r', '\n') : text;
  const after = Math.max(0, ...header.lines, ...header.above);
  return [...split.push(fed), ...split.end()]
    .filter(({ cells, line }) => line > after && cells.some((cell) => cell.trim() !== ''))
    .map(({ line }) => line);
}

function explained(outcome: RowOutcome & { state: 'attention' }): string {
  const { problems, line } = outcome;
  if (problems.length === 0) throw new Error(`${line}: to be mended, and nobody says why`);
  for (const each of problems)
    if (each.message === '' || each.fix === '' || /\{\w+\}/.test(each.message.replace(String(each.value), '')))
      throw new Error(`${line}: ${each.code} is not said well: ${each.message}`);
  return mendLine(outcome);
}

/** The list to mend has a record for each row, whatever its cells hold. */
function writtenWhole(list: readonly string[], proposal: Proposal, seed: number): void {
  const split = splitter(',');
  const records = [...split.push(mendHeader(proposal.header.titles) + list.join('')), ...split.end()];
  if (records.length !== list.length + 1 || records.some(({ torn }) => torn))
    throw new Error(`seed ${seed}: ${list.length} rows to mend, ${records.length - 1} written`);
}
