import { answer, changeColumn, type Proposal } from '@sorrel/intake';
import { exit, Stop } from '../exit.ts';
import { intakeWords } from '../intake-words.ts';
import { words } from '../words.ts';

interface Said {
  readonly answers: readonly string[];
  readonly columns: readonly string[];
  readonly suggested: boolean;
}

/** Questions that a file may ask. */
const KNOWN = /^(?:ph-column|ph-method|buffer|dates|decimal|lime|lime-(?:depth|target|purity))$|^(?:unit|meaning): /;

const wrong = (reason: string): Stop => new Stop(exit.usage, words.usage('intake', reason));

/** A proposal with everything put in that the person said. Answers may come in any order. */
export function settled(proposal: Proposal, { answers, columns, suggested }: Said): Proposal {
  let now = proposal;
  for (const text of columns) {
    const at = text.lastIndexOf('=');
    const [title, means] = [text.slice(0, at).trim(), text.slice(at + 1).trim()];
    if (at < 1 || means === '') throw wrong(intakeWords.columnForm(text));
    if (!now.columns.some((column) => column.title === title))
      throw wrong(
        intakeWords.noColumn(
          title,
          now.columns.map((column) => column.title),
        ),
      );
    now = taken(changeColumn(now, title, { means }));
  }
  let left = answers.map((text) => {
    const at = text.indexOf('=');
    if (at < 1) throw wrong(intakeWords.answerForm(text));
    return { text, id: text.slice(0, at).trim(), value: text.slice(at + 1).trim() };
  });
  for (let before = -1; left.length !== before; ) {
    before = left.length;
    left = left.filter(({ text, id, value }) => {
      // A title may hold the sign that stands before the answer.
      const question =
        now.questions.find((each) => each.id === id) ?? now.questions.find((each) => text.startsWith(`${each.id}=`));
      if (question === undefined) return true;
      now = taken(answer(now, question.id, question.id === id ? value : text.slice(question.id.length + 1).trim()));
      return false;
    });
    if (!suggested) continue;
    for (const question of now.questions)
      if (question.suggested !== undefined && now.questions.some((each) => each.id === question.id))
        now = taken(answer(now, question.id, question.suggested));
  }
  // A script gives the same answers to every file; what this file tells by itself needs none.
  const [unasked] = left.filter(({ id }) => !KNOWN.test(id));
  if (unasked !== undefined)
    throw wrong(
      intakeWords.notAnswered(
        unasked.id,
        now.questions.map((each) => each.id),
      ),
    );
  return now;
}

function taken(answered: ReturnType<typeof answer>): Proposal {
  if (answered.ok) return answered.proposal;
  const [problem] = answered.problems;
  throw wrong(`${problem?.message} ${problem?.fix}`);
}
