import { answer, type Proposal, propose, type RowOutcome, readRows, type SenderMapping } from '../src/index.ts';

export const today = '2026-11-01';

/** Every answer a person would give, until nothing is open. */
export function answered(proposal: Proposal, answers: Readonly<Record<string, string>>): Proposal {
  let now = proposal;
  for (let round = 0; round < 50; round++) {
    const question = now.questions.find(({ id }) => answers[id] !== undefined) ?? now.questions[0];
    if (question === undefined) return now;
    const value = answers[question.id];
    if (value === undefined) throw new Error(`nobody answers ${question.id}: ${question.text}`);
    const next = answer(now, question.id, value);
    if (!next.ok) throw new Error(JSON.stringify(next.problems));
    now = next.proposal;
  }
  throw new Error('the questions never end');
}

/** The whole way from bytes to outcomes. */
export async function readAll(
  bytes: Uint8Array,
  name: string,
  answers: Readonly<Record<string, string>> = {},
  senders: readonly SenderMapping[] = [],
): Promise<{ proposal: Proposal; settled: Proposal; outcomes: RowOutcome[] }> {
  const proposed = await propose(bytes, name, { senders });
  if (!proposed.ok) throw new Error(JSON.stringify(proposed.problems));
  const settled = answered(proposed.proposal, answers);
  const outcomes: RowOutcome[] = [];
  for await (const outcome of readRows(bytes, settled, { today })) outcomes.push(outcome);
  return { proposal: proposed.proposal, settled, outcomes };
}

export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);
