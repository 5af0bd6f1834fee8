import type { ReadGarden } from '@sorrel/engine/document';
import { useGarden } from '../../app/garden-context.tsx';
import { Callout } from '../../kit/callout.tsx';
import { label } from '../../words/label.ts';

/** What could not be read, what that leaves out, and what was taken for granted for the whole garden. */
export function GardenNotes({ read }: { readonly read: ReadGarden }) {
  const { speaker } = useGarden();
  const choices = read.choices.filter((choice) => choice.place === undefined);
  return (
    <>
      {read.problems.length === 0 ? null : (
        <Callout kind="wrong" title={label('web.garden-problems')}>
          <ul>
            {read.problems.map((problem) => (
              <li key={`${problem.place}-${problem.field}-${problem.code}`}>
                {problem.place === undefined ? null : <strong>{problem.place}: </strong>}
                {problem.message} {problem.fix}
              </li>
            ))}
            {read.skipped.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </Callout>
      )}
      {choices.length === 0 ? null : (
        <Callout title={label('web.garden-choices')}>
          <ul>
            {choices.map((choice) => (
              <li key={choice.message.code}>{speaker.say(choice.message)}</li>
            ))}
          </ul>
        </Callout>
      )}
    </>
  );
}
