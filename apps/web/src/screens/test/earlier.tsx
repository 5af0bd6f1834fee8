import { Disclosure } from '../../kit/disclosure.tsx';
import page from '../../kit/page.module.css';
import { day, label } from '../../words/label.ts';
import type { TestEntry } from './draft.ts';
import { byOf, phOf } from './known-tests.tsx';
import type { Correcting } from './test-form.tsx';

/** What a corrected test said before: nothing is ever written over. */
export function Earlier({ correcting }: { readonly correcting: Correcting }) {
  const versions = correcting.things.entries.flatMap(({ entry }) =>
    (entry.action === 'add' && entry.id === correcting.id) ||
    (entry.action === 'correct' && entry.thing === correcting.id)
      ? [entry]
      : [],
  );
  if (versions.length < 2) return null;
  return (
    <Disclosure title={label('web.test-earlier')}>
      {() => (
        <ul className={page.plain}>
          {versions.slice(0, -1).map((entry) => {
            const content = entry.content as TestEntry;
            return (
              <li key={entry.id}>
                {label('web.test-earlier-line', {
                  date: day(entry.at),
                  who: entry.by,
                  what: label('web.test-known-line', { ph: phOf(content), by: byOf(content) }),
                })}
              </li>
            );
          })}
        </ul>
      )}
    </Disclosure>
  );
}
