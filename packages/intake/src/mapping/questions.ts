import type { MessageCode } from '@sorrel/almanac/words';
import { bufferKinds, phMethods } from '@sorrel/engine/document';
import { dateOrders } from '../cells/date.ts';
import type { DecimalEvidence, Evidence } from '../columns/evidence.ts';
import { decimalOf, shareInside } from '../columns/evidence.ts';
import { isFigure, meaningRow, NOT_USED, needsUnit } from '../columns/meanings.ts';
import { type Guess, IN_CELLS, likelyUnit } from '../columns/recognise.ts';
import { unitsFor } from '../columns/units.ts';
import { sentence, type Words } from '../problem.ts';
import type { Choice, Question } from './question.ts';
import type { MappedColumn, SenderMapping } from './schema.ts';

/** All that is known of a file when its questions are made. */
export interface Known {
  readonly titles: readonly string[];
  readonly mapping: SenderMapping;
  readonly guesses: readonly Guess[];
  readonly evidence: readonly Evidence[];
  readonly decimals: DecimalEvidence;
}

const MOST_EXAMPLES = 5;

function ask(
  id: string,
  code: MessageCode,
  words: Words,
  more: Partial<Omit<Question, 'id' | 'message' | 'text'>>,
): Question {
  return {
    id,
    message: { code, parameters: words },
    text: sentence(code, words),
    choices: [],
    examples: [],
    ...more,
  };
}

const choice = (value: string, code: MessageCode): Choice => ({ value, label: sentence(code) });
const plain = (values: readonly string[]): Choice[] => values.map((value) => ({ value, label: value }));
const notUsed = choice(NOT_USED, 'intake.choice-not-used');

/** What is still open about a file: everything that decides how its rows are read and that nothing in it tells. */
export function openQuestions(known: Known): Question[] {
  const { mapping } = known;
  const questions: Question[] = [];
  const columns = mapping.columns.map((column, at) => ({ column, at }));
  const used = columns.filter(({ column }) => meaningRow(column.means)?.column !== undefined);
  const has = (means: string) => used.some(({ column }) => column.means === means);
  if (!has('ph')) questions.push(phColumn(known));
  for (const { column, at } of used) questions.push(...aboutColumn(column, at, known, has));
  const dates = aboutDates(used, known);
  if (dates !== undefined) questions.push(dates);
  const decimal = aboutDecimal(used, known);
  if (decimal !== undefined) questions.push(decimal);
  if (has('lime-rate')) questions.push(...aboutLime(used, mapping, has));
  return questions;
}

const examplesOf = (known: Known, at: number): string[] => known.evidence[at]?.samples.slice(0, MOST_EXAMPLES) ?? [];

/** No column was recognised as the pH: those whose figures could be one are offered. */
function phColumn({ titles, mapping, evidence }: Known): Question {
  const ph = meaningRow('ph');
  const fitting = titles.filter((_, at) => {
    const seen = evidence[at];
    if (seen === undefined || seen.figures.length === 0 || seen.numeric < 0.5) return false;
    if (meaningRow(mapping.columns[at]?.means ?? '')?.column !== undefined) return false;
    return shareInside(seen.figures, 1, ph?.low, ph?.high) > 0.8;
  });
  return ask('ph-column', 'intake.ask-ph-column', {}, { choices: plain(fitting.length > 0 ? fitting : titles) });
}

type Used = readonly { readonly column: MappedColumn; readonly at: number }[];

function aboutColumn(column: MappedColumn, at: number, known: Known, has: (means: string) => boolean): Question[] {
  const guess = known.guesses[at];
  const { title, means } = column;
  const examples = examplesOf(known, at);
  const row = meaningRow(means);
  if (row === undefined) return [];
  const settled = guess?.reason === 'remembered' || guess?.reason === 'answered';
  const questions: Question[] = [];
  if (!settled && (guess?.confidence ?? 0) < 0.6)
    questions.push(
      ask(
        `meaning: ${title}`,
        'intake.ask-meaning',
        { field: title, guess: row.title },
        {
          column: title,
          choices: [{ value: means, label: row.title }, notUsed],
          examples,
        },
      ),
    );
  if (!settled && means === 'lead' && !/total/i.test(title))
    questions.push(
      ask(
        `meaning: ${title}`,
        'intake.ask-lead',
        { field: title },
        {
          column: title,
          choices: [{ value: 'lead', label: row.title }, notUsed],
          examples,
        },
      ),
    );
  if (means === 'ph' && column.method === undefined && !has('ph-method'))
    questions.push(phMethod(title, guess, examples));
  if ((means === 'buffer-ph' || means === 'lime-index') && column.buffer === undefined && !has('buffer-kind'))
    questions.push(
      ask(
        'buffer',
        'intake.ask-buffer',
        { field: title },
        {
          column: title,
          choices: [...plain(bufferKinds), notUsed],
          examples,
        },
      ),
    );
  if (needsUnit(means) && column.unit === undefined) questions.push(unit(column, known, at, examples));
  return questions;
}

function phMethod(title: string, guess: Guess | undefined, examples: readonly string[]): Question {
  const fitting = guess?.method === 'water' ? phMethods.filter((method) => method.startsWith('water')) : phMethods;
  return ask(
    'ph-method',
    'intake.ask-ph-method',
    { field: title },
    {
      column: title,
      choices: [
        ...plain(fitting.filter((method) => method !== 'unstated')),
        choice('unstated', 'intake.choice-unstated'),
      ],
      examples,
    },
  );
}

function unit(column: MappedColumn, known: Known, at: number, examples: readonly string[]): Question {
  const { title, means } = column;
  const row = meaningRow(means);
  const guess = known.guesses[at];
  const evidence = known.evidence[at];
  const strange = guess?.strangeUnit;
  const choices = row === undefined ? [] : unitsFor(row).filter((each) => !each.by_volume);
  const likely =
    evidence === undefined || strange !== undefined ? undefined : likelyUnit(means, evidence, column.oxide);
  return ask(
    `unit: ${title}`,
    strange === undefined ? 'intake.ask-unit' : 'intake.ask-unit-strange',
    strange === undefined ? { field: title } : { field: title, written: strange },
    {
      column: title,
      choices: [
        ...plain([...new Set(choices.map((each) => each.unit))]),
        ...((evidence?.withUnit ?? 0) > 0 ? [choice(IN_CELLS, 'intake.choice-in-cells')] : []),
        notUsed,
      ],
      examples,
      ...(likely === undefined ? {} : { suggested: likely }),
    },
  );
}

function aboutDates(used: Used, { mapping, evidence }: Known): Question | undefined {
  const found = used.find(({ column }) => meaningRow(column.means)?.quantity === 'date');
  const seen = found === undefined ? undefined : evidence[found.at]?.dates;
  if (found === undefined || seen === undefined || !seen.needed || mapping.dates !== undefined) return undefined;
  const possible = seen.possible.length > 0 ? seen.possible : dateOrders.filter((order) => order !== 'spreadsheet-day');
  const [only] = seen.possible;
  const examples = evidence[found.at]?.samples.slice(0, MOST_EXAMPLES) ?? [];
  return ask(
    'dates',
    'intake.ask-dates',
    { example: examples[0] ?? '' },
    {
      column: found.column.title,
      choices: possible.map((order) => choice(order, `intake.choice-${order}`)),
      examples,
      ...(seen.possible.length === 1 && only !== undefined ? { suggested: only } : {}),
    },
  );
}

function aboutDecimal(used: Used, { mapping, evidence, decimals }: Known): Question | undefined {
  if (mapping.decimal !== undefined || decimals.either === 0) return undefined;
  const cells = used.filter(({ column }) => isFigure(column.means)).flatMap(({ at }) => evidence[at]?.samples ?? []);
  const example = cells.find((cell) => cell === decimals.example) ?? decimals.example ?? '';
  const likely = decimalOf(decimals);
  return ask(
    'decimal',
    'intake.ask-decimal',
    { example },
    {
      choices: [choice('point', 'intake.choice-point'), choice('comma', 'intake.choice-comma')],
      examples: [example],
      ...(likely === undefined ? {} : { suggested: likely }),
    },
  );
}

function aboutLime(used: Used, { lime }: SenderMapping, has: (means: string) => boolean): Question[] {
  const column = used.find((each) => each.column.means === 'lime-rate')?.column.title ?? '';
  if (lime === undefined)
    return [
      ask(
        'lime',
        'intake.ask-lime',
        { field: column },
        {
          column,
          choices: [choice('use', 'intake.choice-use'), choice('leave-out', 'intake.choice-leave-out')],
          suggested: 'leave-out',
        },
      ),
    ];
  if (!lime.use) return [];
  const questions: Question[] = [];
  if (lime.depth === undefined && !has('lime-depth'))
    questions.push(ask('lime-depth', 'intake.ask-lime-depth', {}, { column, wants: 'length' }));
  if (lime.target === undefined && !has('lime-target'))
    questions.push(ask('lime-target', 'intake.ask-lime-target', {}, { column, wants: 'ph' }));
  if (lime.purity === undefined && !has('lime-purity'))
    questions.push(ask('lime-purity', 'intake.ask-lime-purity', {}, { column, wants: 'percent' }));
  return questions;
}
