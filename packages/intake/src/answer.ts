import type { Problem } from '@sorrel/engine/document';
import { meanings, NOT_USED } from './columns/meanings.ts';
import type { Guess } from './columns/recognise.ts';
import { withAnswer } from './mapping/answer.ts';
import type { MappedColumn } from './mapping/schema.ts';
import { problem } from './problem.ts';
import type { Proposal } from './proposal.ts';
import { refreshed } from './refresh.ts';

export type Answered =
  | { readonly ok: true; readonly proposal: Proposal }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Answers one open question of a proposal. An answer may close a question and open another (a column that turns out to
 * be the pH is asked about its method).
 *
 * @param id of the question
 * @param value one of its choices, or a text of the kind it wants
 */
export function answer(proposal: Proposal, id: string, value: string): Answered {
  const question = proposal.questions.find((each) => each.id === id);
  if (question === undefined) throw new RangeError(`No open question is called ${id}`);
  const mapping = withAnswer(proposal.mapping, question, value.trim());
  if (mapping === undefined) {
    const known = question.choices.map((each) => each.value).join(', ') || wanted(question.wants);
    return { ok: false, problems: [problem('intake.not-an-answer', id, value, { question: question.text, known })] };
  }
  const about = id === 'ph-column' ? value : question.column;
  return { ok: true, proposal: settled(proposal, mapping, about) };
}

/**
 * Gives a column another meaning, unit or method than was proposed, or leaves it out. Another column of the same
 * meaning is left out instead.
 *
 * @param change what is different; `means: 'not-used'` leaves the column out
 */
export function changeColumn(
  proposal: Proposal,
  title: string,
  change: Partial<Omit<MappedColumn, 'title'>>,
): Answered {
  const { means } = change;
  if (means !== undefined && means !== NOT_USED && !meanings.includes(means))
    return {
      ok: false,
      problems: [problem('intake.not-an-answer', title, means, { question: title, known: meanings.join(', ') })],
    };
  const mapping = {
    ...proposal.mapping,
    columns: proposal.mapping.columns.map((column): MappedColumn => {
      if (column.title === title)
        return means === undefined || means === column.means ? { ...column, ...change } : { title, means, ...change };
      return means !== undefined && means !== NOT_USED && column.means === means
        ? { title: column.title, means: NOT_USED }
        : column;
    }),
  };
  return { ok: true, proposal: settled(proposal, mapping, title) };
}

function settled(proposal: Proposal, mapping: Proposal['mapping'], about: string | undefined): Proposal {
  const guesses = proposal.seen.guesses.map((guess, at): Guess => {
    const column = mapping.columns[at];
    return column === undefined || column.title !== about
      ? guess
      : { ...guess, means: column.means, reason: 'answered', confidence: 1 };
  });
  const { columns: _columns, questions: _questions, assumed: _assumed, ...rest } = proposal;
  return refreshed({ ...rest, mapping, seen: { ...proposal.seen, guesses } });
}

const wanted = (wants: 'length' | 'ph' | 'percent' | undefined): string =>
  wants === 'length' ? '7 in or 15 cm' : wants === 'ph' ? '6.5' : '100';
