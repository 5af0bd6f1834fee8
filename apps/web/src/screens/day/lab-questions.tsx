import { answer, type Proposal } from '@sorrel/intake';
import { useState } from 'react';
import { Button } from '../../kit/button.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { Select, TextInput } from '../../kit/text-input.tsx';
import { label } from '../../words/label.ts';

type Question = Proposal['questions'][number];
interface Props {
  readonly questions: readonly Question[];
  readonly proposal: Proposal;
  readonly onChange: (proposal: Proposal) => void;
}

/** What only a person knows of the file. Asked once for each sender. */
export function LabQuestions({ questions, proposal, onChange }: Props) {
  if (questions.length === 0) return null;
  return (
    <Section id="questions" title="web.day-lab-questions">
      <p className={page.soft}>{label('web.day-lab-questions-text')}</p>
      <ul className={page.plain}>
        {questions.map((question) => (
          <li key={question.id} className={page.sheet}>
            <Asked question={question} proposal={proposal} onChange={onChange} />
          </li>
        ))}
      </ul>
    </Section>
  );
}

function Asked({ question, proposal, onChange }: Omit<Props, 'questions'> & { readonly question: Question }) {
  const { id, text, choices, suggested, examples } = question;
  const [typed, setTyped] = useState('');
  const [problem, setProblem] = useState<string>();
  const give = (value: string) => {
    const answered = answer(proposal, id, value);
    if (answered.ok) onChange(answered.proposal);
    else setProblem(answered.problems.map(({ message, fix }) => `${message} ${fix}`).join(' '));
  };
  const hint =
    examples.length === 0 ? undefined : label('web.day-lab-question-examples', { examples: examples.join(', ') });
  if (choices.length > 0)
    return (
      <Select
        label={text}
        hint={hint}
        problem={problem}
        value=""
        onChange={give}
        options={[
          { value: '', label: label('web.day-lab-choose') },
          ...choices.map((choice) => ({
            value: choice.value,
            label: choice.value === suggested ? label('web.day-lab-suggested', { choice: choice.label }) : choice.label,
          })),
        ]}
      />
    );
  return (
    <form
      noValidate
      className={page.sheet}
      onSubmit={(event) => {
        event.preventDefault();
        give(typed);
      }}
    >
      <TextInput
        label={text}
        hint={hint}
        problem={problem}
        value={typed}
        onChange={(value) => {
          setTyped(value);
          setProblem(undefined);
        }}
      />
      <div>
        <Button type="submit">{label('web.day-lab-answer')}</Button>
      </div>
    </form>
  );
}
