import { meaningRow } from './columns/meanings.ts';
import { openQuestions } from './mapping/questions.ts';
import { sentence } from './problem.ts';
import type { Proposal, ProposedColumn } from './proposal.ts';

const EXAMPLES = 5;

/** A proposal with its columns and questions as its mapping now has them. */
export function refreshed(proposal: Omit<Proposal, 'columns' | 'questions' | 'assumed'>): Proposal {
  const { mapping, seen } = proposal;
  const columns = mapping.columns.map((column, at): ProposedColumn => {
    const guess = seen.guesses[at];
    const row = meaningRow(column.means);
    return {
      title: column.title,
      means: column.means,
      label: row?.title ?? sentence('intake.choice-not-used'),
      ...(column.unit === undefined ? {} : { unit: column.unit }),
      ...(column.method === undefined && column.buffer === undefined
        ? {}
        : { method: column.method ?? column.buffer ?? '' }),
      confidence: guess?.confidence ?? 0,
      reason: sentence(`intake.because-${guess?.reason ?? 'unknown'}`),
      used: row?.column !== undefined,
      examples: seen.evidence[at]?.samples.slice(0, EXAMPLES) ?? [],
    };
  });
  const has = (to: string) => columns.some((column) => meaningRow(column.means)?.column === to);
  const assumed = [
    ...(has('date') ? [] : [sentence('intake.assume-today')]),
    ...(has('test_depth') ? [] : [sentence('intake.assume-depth')]),
    ...(has('area') ? [] : [sentence('intake.assume-area')]),
    ...(has('plants') || has('target') || has('target_low') ? [] : [sentence('intake.assume-plants')]),
  ];
  return { ...proposal, columns, assumed, questions: openQuestions({ ...seen, mapping }) };
}
